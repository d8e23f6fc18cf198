/**
 * Which engine plays: a session saved under another hash can be shown with the score it had, but not played on. The hash
 * is over everything that decides a trajectory or a score, made when the project is built.
 */
export { default as engineHash } from 'virtual:engine-hash';
