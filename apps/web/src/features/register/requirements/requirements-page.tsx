import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { counted } from '../../../format/counts.js';
import { calendarDate } from '../../../format/utc-date.js';
import { useMay } from '../../../server/authority.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { CheckField } from '../../../ui/fields/check-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { Voided } from '../../../ui/status/voided.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { type Kept, RegisterFrame } from '../register-frame.js';
import { type Requirement, requirementsQuery } from './requirement-queries.js';
import { kindWord, scopeText } from './requirement-words.js';
import { RequirementForm } from './rule/requirement-form.js';
import { ruleText } from './rule/rule-words.js';
import './requirements.css';

export const REQUIREMENTS_KEPT: Kept = { act: 'Requirements are kept', authority: 'keep-requirements' };

const COLUMNS: readonly Column<Requirement>[] = [
  {
    id: 'code',
    header: 'Requirement',
    namesRow: true,
    sortBy: ({ code }) => code,
    cell: ({ id, code, title, voided, voidReason }) => (
      <>
        <RouteLink href={`/requirements/${id}`}>
          <span className="serial">{code}</span>
        </RouteLink>
        <span className="duty-title">{title}</span>
        {voided && <Voided reason={voidReason} />}
      </>
    ),
  },
  { id: 'kind', header: 'Kind', cell: ({ kind }) => kindWord(kind), sortBy: ({ kind }) => kind },
  { id: 'scope', header: 'For', cell: scopeText, sortBy: scopeText },
  { id: 'rule', header: 'When', cell: (row) => <span className="duty-reason">{ruleText(row)}</span> },
  {
    id: 'document',
    header: 'Document',
    cell: ({ document, revision, effectiveOn, inForce, voided }) => (
      <>
        {document}, revision <span className="serial">{revision}</span>
        <span className="duty-line small quiet">
          {inForce || voided ? `Effective on ${calendarDate(effectiveOn)}` : 'A later revision counts'}
        </span>
      </>
    ),
    sortBy: ({ document }) => document,
  },
  {
    id: 'open',
    header: 'Subjects open',
    align: 'figures',
    cell: ({ open }) => String(open),
    sortBy: ({ open }) => open,
  },
];

const holds = (row: Requirement, wanted: string): boolean =>
  [row.code, row.title, row.document, scopeText(row)].some((text) => text.toLowerCase().includes(wanted));

/** Every requirement: inspections, overhauls, directives, bulletins, discards and checks. */
export function RequirementsPage() {
  const requirements = useQuery(requirementsQuery);
  const may = useMay('keep-requirements');
  const { find, all } = useSearch({ from: '/signed-in/requirements' });
  const navigate = useNavigate();
  const [typed, setTyped] = useState(find ?? '');
  const wanted = useDeferredValue(typed.trim().toLowerCase());
  const rows = (requirements.data ?? []).filter(
    (row) => (all === true || row.inForce) && (wanted === '' || holds(row, wanted)),
  );
  const look = (next: { find?: string; all?: true }) =>
    void navigate({ to: '/requirements', search: next, replace: true });
  return (
    <RegisterFrame
      title="Requirements"
      below={
        <p>
          <RouteLink href="/directives">Directives and bulletins of an airframe or engine</RouteLink>
        </p>
      }
      kept={REQUIREMENTS_KEPT}
      add={{
        word: 'Add a requirement',
        form: (close) => (
          <RequirementForm
            onAdded={({ code, open }) => {
              announce(
                `${code} was added. It is held against ${counted(open, 'airframe or component', 'airframes, positions or components')}.`,
              );
              close();
            }}
          />
        ),
      }}
    >
      <search className="row">
        <TextField
          label="Find"
          hint="Code, title, document or what it is for"
          type="search"
          value={typed}
          onChange={({ target }) => {
            setTyped(target.value);
            look({
              ...(target.value === '' ? {} : { find: target.value }),
              ...(all === true ? { all } : {}),
            });
          }}
        />
        <CheckField
          label="Earlier revisions and voided ones too"
          checked={all === true}
          onChange={({ target }) =>
            look({ ...(find === undefined ? {} : { find }), ...(target.checked ? { all: true } : {}) })
          }
        />
        {requirements.data !== undefined && <p role="status">{counted(rows.length, 'requirement')}</p>}
      </search>
      <DataTable
        caption="Requirements"
        captionHidden
        columns={COLUMNS}
        rows={rows}
        rowKey={({ id }) => id}
        order={{ column: 'code', descending: false }}
        struck={({ voided }) => voided}
        state={readState(requirements)}
        empty={
          <EmptyState>
            {(requirements.data ?? []).length > 0
              ? 'No requirement matches.'
              : `No requirement is recorded${may ? '. Add one above.' : '.'}`}
          </EmptyState>
        }
      />
    </RegisterFrame>
  );
}
