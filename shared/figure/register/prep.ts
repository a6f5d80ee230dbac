/** Rules of what is made ahead: its volume, its boxes and the room they take; the sentence of each is `rule.<id>` in the words. */
export const prepRules = ['prep.foodVolume', 'prep.volume', 'prep.dishVolume', 'prep.boxes', 'prep.bags', 'prep.bowlBags', 'prep.room', 'prep.space'] as const;
