/** What is seen where nothing of the picture lies. */
export const GROUND = '#2c3438';
