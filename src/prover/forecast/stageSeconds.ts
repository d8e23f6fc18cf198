/** For how long a car is put through each stage, in seconds, before the next one. */
export const stageSeconds = {
  rest: 2,
  running: 90,
  idle: 50,
  shut: 150,
  motorway: 720,
  off: 8,
  bridged: 8,
} as const;
