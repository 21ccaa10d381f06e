/** How a command ends: as it should; with findings that stop publishing; with bad input or usage; with a bug. */
export const EXIT = { fine: 0, findings: 1, badInput: 2, bug: 3 } as const;
