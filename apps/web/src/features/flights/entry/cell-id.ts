/** The id of a grid's cell, so that messages can lead to it. */
export const cellId = (row: number, field: string): string => `flight-${row}-${field}`;
