/** What a person may be; one person can be several. */
export const ROLES = [
  'technician',
  'inspector',
  'certifying-staff',
  'planner',
  'records',
  'auditor',
  'administrator',
] as const;

export type Role = (typeof ROLES)[number];

/** True when the word is a role. Total. */
export function isRole(word: string): word is Role {
  return (ROLES as readonly string[]).includes(word);
}

/** The roles of which one lets a person sign that a step was done, or inspect it. */
export const SIGNING_ROLES: Readonly<Record<'done' | 'inspection', readonly Role[]>> = {
  done: ['technician', 'inspector', 'certifying-staff'],
  inspection: ['inspector', 'certifying-staff'],
};

/** Each role in the words shown to people. */
export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  technician: 'technician',
  inspector: 'inspector',
  'certifying-staff': 'certifying staff',
  planner: 'planner',
  records: 'records office',
  auditor: 'auditor',
  administrator: 'administrator',
};
