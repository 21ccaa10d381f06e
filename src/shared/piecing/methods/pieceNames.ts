const ONES = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A number from 1 to 99 in words, for names in sentences that hold no digits; beyond that, in digits after all. */
export function inWords(number: number): string {
  const one = ONES[number - 1];
  if (one !== undefined) return one;
  const ten = TENS[Math.floor(number / 10) - 2];
  if (ten === undefined) return String(number);
  return number % 10 === 0 ? ten : `${ten}-${ONES[(number % 10) - 1]}`;
}
