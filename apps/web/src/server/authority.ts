import { useSession } from './session.js';

/** Each role in the words shown to people. */
export const ROLE_WORDS: Readonly<Record<string, string>> = {
  technician: 'Technician',
  inspector: 'Inspector',
  'certifying-staff': 'Certifying staff',
  planner: 'Planner',
  records: 'Records office',
  auditor: 'Auditor',
  administrator: 'Administrator',
};

/** 'Records office, Planner' */
export const roleWords = (roles: readonly string[]): string =>
  roles.map((role) => ROLE_WORDS[role] ?? role.replaceAll('-', ' ')).join(', ');

/** What needs an authority, and the roles that hold it. The server is the judge; this only explains. */
const HOLDERS = {
  'log-a-change': ['technician', 'records', 'administrator'],
  'open-a-package': ['planner', 'records', 'certifying-staff', 'administrator'],
  'amend-an-order': ['planner', 'certifying-staff', 'records'],
  'withdraw-a-package': ['planner', 'records', 'administrator'],
  'add-a-step': ['planner', 'certifying-staff'],
  'sign-steps': ['technician', 'inspector', 'certifying-staff'],
  'inspect-steps': ['inspector', 'certifying-staff'],
  'explain-gaps': ['records', 'administrator', 'certifying-staff'],
  release: ['certifying-staff'],
  'keep-records': ['records', 'administrator'],
  'tag-components': ['technician', 'certifying-staff', 'records', 'administrator'],
  'keep-tools': ['planner', 'records', 'administrator'],
  'keep-requirements': ['planner', 'records', 'administrator'],
  'plan-flying': ['planner', 'records', 'administrator'],
  'keep-procedures': ['planner', 'records', 'administrator'],
  'manage-people': ['administrator'],
  'check-records': ['auditor', 'records', 'administrator'],
  'see-people': ['auditor', 'administrator'],
} as const satisfies Record<string, readonly string[]>;

export type Authority = keyof typeof HOLDERS;

/** Whether the person signed in may do this. */
export function useMay(authority: Authority): boolean {
  const session = useSession();
  const roles = session?.person.roles ?? [];
  return HOLDERS[authority].some((role) => roles.includes(role));
}

/** Who may do this: 'Technician, Records office or Administrator'. */
export function holderWords(authority: Authority): string {
  const words = HOLDERS[authority].map((role) => ROLE_WORDS[role] ?? role);
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
