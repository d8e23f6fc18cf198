/** A test that could take away less doubt than this, in nats, cannot split the causes that are left [guess]. */
export const TELLS_NOTHING = 0.03;
