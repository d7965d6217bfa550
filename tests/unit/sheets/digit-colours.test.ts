import { digitColours } from '../../../core/sheets/digit-colours.ts';
import { checkReference, fieldsOf, num } from '../../helpers/reference.ts';

checkReference('digit-colours', {
  'colour-digit': ({ in: given, out }) => {
    const [colour] = digitColours(num(given, 'digit'));
    return [
      { what: 'colour', got: colour?.name, want: out.colour },
      { what: 'letters', got: colour?.letters, want: out.letter_code },
    ];
  },
  'number-as-colours': (row) => [
    {
      what: 'colours, the first digit first',
      got: digitColours(num(fieldsOf(row, 'in'), 'line')).map(({ name }) => name),
      want: row.out.colours,
    },
  ],
});
