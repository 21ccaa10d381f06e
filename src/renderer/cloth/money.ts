/** Money in whatever the designer counts in: two places. */
export function moneyText(amount: number): string {
  return amount.toFixed(2);
}
