/**
 * The usual cautions of a tape circuit with a coin cell. They do not replace the rules where the maker lives.
 * @source swallowing: Litovitz et al., Pediatrics 125(6), June 2010; National Capital Poison Center, battery guideline
 * @source compartments: 16 CFR part 1263 with ANSI/UL 4200A-2023; post: UN3091, air packing instruction 970 section II
 */
export const cautionWords = {
  heading: 'Cautions',
  defer:
    'These are general cautions. The rules where you live, the maker of the cell and licensed professionals come before them.',
  items: [
    {
      title: 'Coin cells can kill when swallowed',
      text:
        'A 20 mm lithium cell stuck in the gullet burns through within two hours, and a flat one still harms. If a cell may have been swallowed, ' +
        'or put in a nose or an ear, go to an emergency department at once and call the poison line of your country; do not wait for signs and do ' +
        'not make the child vomit. Keep cells, loose or in cards, out of the reach of small children, and never give a small child a card with a cell in it.',
    },
    {
      title: 'Shut the cell in',
      text:
        'Glue or stitch the cell bay shut, so that a child cannot open it. Foam tape alone does not make a secured compartment. What is sold or given ' +
        'out may have to meet rules for coin cell compartments and warnings, such as 16 CFR part 1263 with UL 4200A in the United States; ask what holds where you are.',
    },
    {
      title: 'A shorted cell gets hot',
      text:
        'Copper that joins both faces makes the cell hot within a minute; it may leak or vent. Take it out at once, by its rim, with something that does not ' +
        'conduct, put it outdoors on stone or in sand, and do not use it again. Never lay cells loose on tape or on each other, never recharge, heat, cut or pierce one.',
    },
    {
      title: 'In the post',
      text:
        'Lithium cells are dangerous goods in the post. Cells built into equipment are often allowed in small numbers and loose ones are not; the postal ' +
        'service decides, so ask yours before sending. Put an insulating pull tab between cell and strip, so that the card cannot light or short on the way.',
    },
    {
      title: 'Eyes',
      text: 'Do not look into a bright lamp from close by, and do not use ultraviolet lamps where children can look into them.',
    },
    {
      title: 'Blades and edges',
      text: 'Foil edges and craft knives cut. Cut away from the hand on a mat, and keep blades from children.',
    },
    {
      title: 'Only coin cells',
      text:
        'This checks cards fed by one coin cell. Never connect such a circuit to the mains, to a charger, or to rechargeable lithium packs; leave anything ' +
        'of that kind to a licensed professional.',
    },
  ],
} as const;
