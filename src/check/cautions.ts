// What must stand beside every figure on pressure, ties, props, shoring and striking?

const AID =
  "This is a planning aid and no design: the temporary-works engineer appointed for the job designs, checks and approves forms, ties, props, bearing, bracing and every step of striking, and the local code governs.";

const PLACING: readonly string[] = [
  "A pressure below the full liquid head holds only for the mix, the temperature of the concrete and the highest rate of placing stated, with vibration from inside and placing from above; self-compacting concrete, pumping from below, external vibration and expanding cement are outside the formulas.",
  "Do not vibrate the layer below again through its depth: the poker goes a hand's breadth into it. Where a poker works the pressure is liquid, and deep re-vibration has been measured to press far above the formulas.",
  "Place in layers, all round a room and on both sides of every opening at nearly one level, and never let the concrete fall free through more than the specification allows.",
  "A figure for a tie counts on every tie beside it: two people count the lowest rows before the pour, and a form that moves stops it.",
  "Permissible loads and design strengths are never mixed: each limit of the kit is taken as the project says it is stated.",
];

const STANDING: readonly string[] = [
  "The engineer of the permanent structure confirms what the slab can carry at each age.",
  "No panel, strip or prop is loosened without a signed permit that states the strength measured and the strength required; hours alone prove nothing, for cold, retarder, slag or a late load set the clock back.",
  "Props that are to stay remain tight and untouched while the panels come down; none is taken out and put back unless the drawing shows that step.",
  "Strike by and by: ease all supports first, then from mid-span towards walls and columns, cantilevers from the tip; nobody stands under a bay that is struck in part.",
  "Nothing is stored on a floor, and none is cast over it, before its day on the load chart.",
  "Each prop is straight and undamaged, of the stated class and length, with its own pin, plumb within 1.5 degrees, loaded within 25 mm of its axis, with full end plates on a sound base, and stands over the prop below.",
  "Reshores are set snug and not driven tight: force lifts the slab and loads it where it should not be loaded.",
  "Look at the props before, during and after placing, and stop if one settles, bows or lifts at its head.",
  "Balconies, free edges, openings, stair landings and thicker strips need props of their own, drawn for the purpose.",
  "Place the concrete evenly, in no heap beyond the allowance stated.",
  "Another slab thickness, storey height, mix, cycle or order of work makes these figures void until they are checked again.",
];

/** To be printed with every plan of props and striking, the most important first. English; sheets have their own language. */
export const SHORING_CAUTIONS: readonly string[] = [AID, ...STANDING];

/** To be printed with every result of a check, the most important first. English. */
export const CAUTIONS: readonly string[] = [AID, ...PLACING, ...STANDING];
