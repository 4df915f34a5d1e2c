// Data as JSON text: two blanks a level, one line end behind it.

export const asJson = (data: unknown): string => `${JSON.stringify(data, undefined, 2)}\n`;
