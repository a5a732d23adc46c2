// One person for each role, and a second who may release. Names are invented; the password is for the demonstration only.
const PASSWORD = 'strut-and-log-page-2026';

export const people = [
  ['ottoline.winterlea', 'Ottoline Winterlea', 'administrator', null],
  ['tove.braskel', 'Tove Braskel', 'technician', 'ZQ.66.0318'],
  ['ilo.fenwarth', 'Ilo Fenwarth', 'inspector', 'ZQ.66.0224'],
  ['cora.lindqvane', 'Cora Lindqvane', 'certifying-staff', 'ZQ.66.0107'],
  ['joss.merriwold', 'Joss Merriwold', 'certifying-staff', 'ZQ.66.0142'],
  ['pim.haldorey', 'Pim Haldorey', 'planner', null],
  ['rena.oskwold', 'Rena Oskwold', 'records', null],
  ['odd.thornebeck', 'Odd Thornebeck', 'auditor', null],
].map(([signInName, fullName, role, licence]) => ({
  signInName,
  password: PASSWORD,
  fullName,
  roles: [role],
  licence,
}));
