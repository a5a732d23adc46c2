// Tools that are calibrated, and who may sign what. Serial numbers, certificates and letters are invented.

const wrench = (serialNumber, description, unit, rangeLow, rangeHigh, calibrations) => ({
  serialNumber,
  description,
  kind: 'torque-wrench',
  unit,
  rangeLow,
  rangeHigh,
  deviation: '4',
  calibrations: calibrations.map(calibration),
});
const other = (serialNumber, description, kind, range, calibrations) => ({
  serialNumber,
  description,
  kind,
  ...range,
  calibrations: calibrations.map(calibration),
});
const calibration = ([calibratedOn, dueOn, certificate]) => ({ calibratedOn, dueOn, certificate });
const range = (unit, rangeLow, rangeHigh) => ({ unit, rangeLow, rangeHigh });

/** One of them is out of date, one soon will be. */
export const tools = [
  wrench('TW-2088', 'Torque wrench, 1/2 inch drive', 'N·m', '40', '200', [
    ['2025-10-30', '2026-10-30', 'CL-25-3391'],
  ]),
  wrench('TW-2107', 'Torque wrench, 1/2 inch drive', 'N·m', '40', '200', [
    ['2025-10-13', '2026-10-12', 'CL-25-3107'],
    ['2026-10-12', '2027-10-11', 'CL-26-2984'],
  ]),
  wrench('TW-2111', 'Torque wrench, 3/8 inch drive', 'N·m', '20', '100', [
    ['2026-08-20', '2027-08-19', 'CL-26-2417'],
  ]),
  wrench('TW-2120', 'Torque wrench, 3/4 inch drive', 'N·m', '100', '500', [
    ['2025-12-09', '2026-12-08', 'CL-25-3902'],
  ]),
  wrench('TW-2134', 'Torque wrench, 1/2 inch drive', 'lbf·in', '150', '750', [
    ['2026-09-01', '2027-08-31', 'CL-26-2560'],
  ]),
  other('GA-0412', 'Pressure gauge, hydraulic test stand', 'gauge', range('psi', '0', '4000'), [
    ['2026-05-18', '2027-05-17', 'CL-26-1420'],
  ]),
  other('GA-0433', 'Load cell of the engine hoists', 'gauge', range('kN', '2', '60'), [
    ['2026-07-06', '2027-07-05', 'CL-26-1988'],
  ]),
  other('BS-0061', 'Borescope with measuring tip', 'other', {}, [['2026-03-02', '2027-03-01', 'CL-26-0607']]),
];

const SCOPES = { technician: ['work'], inspector: ['work', 'inspection'] };
const ALL = ['work', 'inspection', 'release'];

/** What each of these people may sign; one of them on one type only, and not for much longer. */
export function authorisations(people) {
  return people.flatMap(({ signInName, roles: [role], pin }) => {
    if (pin === null) return [];
    return (SCOPES[role] ?? ALL).map((scope) => ({
      signInName,
      scope,
      ...(signInName === 'nils.garrowby'
        ? { airframeType: 'V-420', fromOn: '2026-06-01', toOn: '2026-12-18', reference: 'Letter QA-26-031' }
        : {
            airframeType: null,
            fromOn: '2024-11-20',
            toOn: null,
            reference: 'Authorisation list AL-24, sheet 2',
          }),
    }));
  });
}
