/** By which prover something was proved: everything that decides what it finds, hashed when the project is built. */
export { default as proverHash } from 'virtual:prover-hash';
