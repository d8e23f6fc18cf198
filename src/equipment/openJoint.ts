/**
 * A joint undone. It is cracked first, so that what is left hisses out past its seal: 20 mm2 [guess]. Level with the room,
 * an open pipe still trades gas with it: heavy gas pours out, air and its moisture come in, 2 mL a second [guess], which
 * brings 0.1 g of water an hour and so fills a drier in a few days; an open loop calls for a new one after a day.
 */
export const OPEN_JOINT_CDA_M2 = 20e-6;
export const EXCHANGE_M3_PER_S = 2e-6;
/** Within this of the room's pressure a joint trades; over it, it only blows. */
export const LEVEL_PA = 3000;
