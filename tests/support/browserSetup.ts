export function setup(): void {}
