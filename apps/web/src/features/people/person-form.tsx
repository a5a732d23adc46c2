import { type Act, useAct } from '../../server/act.js';
import { ROLE_WORDS } from '../../server/authority.js';
import { Button } from '../../ui/actions/button.js';
import { type ActForm, type Faults, useActForm } from '../../ui/fields/act-form.js';
import { CheckField } from '../../ui/fields/check-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { addPerson, type NewPerson, PEOPLE_KEY, type Person } from './people-data.js';
import './people.css';

type Role = NewPerson['roles'][number];

const ROLES: readonly Role[] = [
  'technician',
  'inspector',
  'certifying-staff',
  'planner',
  'records',
  'auditor',
  'administrator',
];

interface Typed {
  readonly fullName: string;
  readonly signInName: string;
  readonly licence: string;
  readonly password: string;
  readonly roles: readonly Role[];
}

const START: Typed = { fullName: '', signInName: '', licence: '', password: '', roles: [] };

/** The fewest characters of a password, as the server asks. */
const SHORTEST_PASSWORD = 15;

function check({ fullName, signInName, password, roles }: Typed): Faults {
  return {
    ...(fullName.trim() === '' ? { fullName: 'Enter the full name' } : {}),
    ...(signInName.trim() === '' ? { signInName: 'Enter a sign-in name' } : {}),
    ...(roles.length === 0 ? { roles: 'Choose at least one role' } : {}),
    ...(password.length < SHORTEST_PASSWORD
      ? { password: `Enter a password of at least ${SHORTEST_PASSWORD} characters` }
      : {}),
  };
}

const wordsOf = ({ fullName, signInName, licence, password, roles }: Typed): NewPerson => ({
  fullName: fullName.trim(),
  signInName: signInName.trim(),
  password,
  roles: [...roles],
  ...(licence.trim() === '' ? {} : { licence: licence.trim() }),
});

function RoleChoice({ form }: { readonly form: ActForm<Typed> }) {
  const { id, error } = form.field('roles');
  const { roles } = form.typed;
  const toggle = (role: Role, on: boolean) =>
    form.change({ roles: on ? [...roles, role] : roles.filter((held) => held !== role) });
  return (
    <fieldset className="choice-group" aria-describedby={error === null ? undefined : `${id}-error`}>
      <legend className="field-label">Roles</legend>
      {error !== null && (
        <span className="field-error" id={`${id}-error`}>
          {error}
        </span>
      )}
      {ROLES.map((role, place) => (
        <CheckField
          key={role}
          {...(place === 0 ? { id } : {})}
          label={ROLE_WORDS[role] ?? role}
          checked={roles.includes(role)}
          onChange={(event) => toggle(role, event.target.checked)}
        />
      ))}
    </fieldset>
  );
}

/** A person to be: name, roles and a first password, which the person must change. */
export function PersonForm({ onAdded }: { readonly onAdded: (person: Person) => void }) {
  const adding: Act<NewPerson, Person> = useAct({
    perform: addPerson,
    onDone: onAdded,
    refresh: [PEOPLE_KEY],
  });
  const form = useActForm({ start: START, check, words: wordsOf, act: adding });
  const { typed, change, field } = form;
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <TextField
        {...field('fullName')}
        label="Full name"
        hint="As it stands under a signature"
        value={typed.fullName}
        onChange={(event) => change({ fullName: event.target.value })}
        autoFocus
      />
      <TextField
        {...field('signInName')}
        label="Sign-in name"
        hint="Small letters, digits, dots and hyphens"
        autoCapitalize="none"
        spellCheck={false}
        value={typed.signInName}
        onChange={(event) => change({ signInName: event.target.value })}
      />
      <TextField
        {...field('licence')}
        label="Licence number"
        optional
        hint="Certifying staff need one to release"
        mono
        value={typed.licence}
        onChange={(event) => change({ licence: event.target.value })}
      />
      <RoleChoice form={form} />
      <TextField
        {...field('password')}
        label="First password"
        hint="At least 15 characters. It must be changed at the first sign-in."
        type="password"
        autoComplete="new-password"
        value={typed.password}
        onChange={(event) => change({ password: event.target.value })}
      />
      <div>
        <Button type="submit" kind="primary" busy={form.busy}>
          Add the person
        </Button>
      </div>
    </form>
  );
}
