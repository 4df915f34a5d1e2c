// A figure against limits in the same unit: one rule for the record and for the page on a tablet, which has no table of units. Limits
// themselves are inside. It says nothing of what that means for the machine.

export const isOutside = (
  value: number,
  { low, high }: { readonly low?: number | undefined; readonly high?: number | undefined },
): boolean => (low !== undefined && value < low) || (high !== undefined && value > high);
