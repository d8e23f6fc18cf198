/**
 * Hand injector that screws oil into an open hose, whatever pressure is behind it. Its cartridge and the oil's density
 * (a polyglycol, about 0.99 kg/L at 20 degC) are from memory.
 */
export const OIL_INJECTOR = {
  cartridgeM3: 120e-6,
  oilKgPerM3: 990,
} as const;
