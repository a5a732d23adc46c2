import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../../../format/counts.js';
import { componentChoiceQuery, componentQuery } from '../../../../server/components.js';
import { airframesQuery } from '../../../../server/fleet.js';
import { heldKey, requirementsOnQuery } from '../../../../server/requirements.js';
import { ActionLink } from '../../../../ui/actions/action-link.js';
import { Button } from '../../../../ui/actions/button.js';
import { CheckField } from '../../../../ui/fields/check-field.js';
import { ComboField } from '../../../../ui/fields/combo-field.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { Answered } from '../../../../ui/messages/answered.js';
import { EmptyState } from '../../../../ui/messages/empty-state.js';
import { ProblemPanel } from '../../../../ui/messages/problem-panel.js';
import { PageHeading } from '../../../../ui/page/page-heading.js';
import { StatusMark } from '../../../../ui/status/status-mark.js';
import { DataTable } from '../../../../ui/table/data-table.js';
import { requirementsQuery } from '../requirement-queries.js';
import { SHEET_COLUMNS, type SheetRow } from './sheet-columns.js';
import '../requirements.css';

interface Of {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
}

const KINDS = ['directive', 'bulletin'];

const isNeverAssessed = ({ status }: SheetRow): boolean => status.reasonCodes.includes('NEVER_ASSESSED');

const OTHERS = ['OTHER_TYPE', 'OTHER_MODEL', 'OTHER_PART_NUMBER'];

/** Not of this kind of thing at all: told only when asked for, or a sheet is mostly these. */
const isForOthers = ({ status }: SheetRow): boolean =>
  status.status === 'not-applicable' && status.reasonCodes.some((code) => OTHERS.includes(code));

function Sheet({ of, named }: { readonly of: Of; readonly named: string }) {
  const held = useQuery(requirementsOnQuery({ ...of, notApplicable: true }));
  const all = useQuery(requirementsQuery).data ?? [];
  const [others, setOthers] = useState(false);
  return (
    <Answered query={held} doing="Reading directives and bulletins" lines={8}>
      {(rows) => {
        const every = rows
          .filter(({ kind }) => KINDS.includes(kind))
          .map(
            (status): SheetRow => ({
              status,
              requirement: all.find(({ id }) => id === status.requirementId),
            }),
          )
          .sort((a, b) => Number(isNeverAssessed(b)) - Number(isNeverAssessed(a)));
        const listed = others ? every : every.filter((row) => !isForOthers(row));
        const hidden = every.length - listed.length;
        const unknown = listed.filter(isNeverAssessed).length;
        return (
          <>
            <div className="no-print">
              <CheckField
                label="With what is for another type, model or part number"
                checked={others}
                onChange={({ target }) => setOthers(target.checked)}
              />
            </div>
            <p role="status">
              {counted(listed.length, 'line')}.{' '}
              {hidden > 0 && `${counted(hidden, 'line')} for another type, model or part number not shown. `}
              {unknown > 0 && <StatusMark status="not-verified" word={`${unknown} never assessed`} />}
            </p>
            <div className="print-landscape">
              <DataTable
                caption={`Directives and bulletins of ${named}`}
                captionHidden
                columns={SHEET_COLUMNS}
                rows={listed}
                rowKey={({ status }) => heldKey(status)}
                empty={<EmptyState>No directive or bulletin in force is for {named}.</EmptyState>}
              />
            </div>
          </>
        );
      }}
    </Answered>
  );
}

/** Whose sheet: an airframe, or a component found by typing. */
function Whose({ of }: { readonly of: Of | null }) {
  const airframes = useQuery(airframesQuery);
  const [typed, setTyped] = useState('');
  const found = useQuery({ ...componentChoiceQuery({ search: typed }), placeholderData: keepPreviousData });
  const navigate = useNavigate({ from: '/directives' });
  if (airframes.error !== null)
    return (
      <ProblemPanel
        error={airframes.error}
        doing="Reading the airframes"
        onRetry={() => void airframes.refetch()}
      />
    );
  return (
    <div className="directives-whose no-print">
      <SelectField
        label="Of an airframe, with its engines"
        unchosen="Choose an airframe"
        options={(airframes.data ?? []).map(({ id, registration }) => ({ value: id, label: registration }))}
        value={of?.kind === 'airframe' ? of.id : ''}
        onChange={({ target }) =>
          void navigate({ search: target.value === '' ? {} : { airframe: target.value } })
        }
      />
      <ComboField
        label="Or of an engine or part"
        hint="Serial or part number"
        mono
        searching={found.isFetching}
        options={(found.data?.rows ?? []).map(({ id, serialNumber, description }) => ({
          id,
          label: serialNumber,
          detail: description,
        }))}
        value={null}
        onTyped={setTyped}
        onChoose={() => undefined}
        onPick={(component) => void navigate({ search: { component } })}
      />
    </div>
  );
}

/** The status of every directive and bulletin on one airframe or engine, for paper too. */
export function DirectivesPage() {
  const { airframe, component } = useSearch({ from: '/signed-in/directives' });
  const registration = useQuery(airframesQuery).data?.find(({ id }) => id === airframe)?.registration;
  const serial = useQuery(componentQuery(component ?? '')).data?.serialNumber;
  const of: Of | null =
    airframe !== undefined
      ? { kind: 'airframe', id: airframe }
      : component !== undefined
        ? { kind: 'component', id: component }
        : null;
  const named = registration ?? serial;
  return (
    <>
      <PageHeading
        title="Directives and bulletins"
        serial={of === null ? undefined : named}
        below={
          <p>
            What applies and why, how and when it was met, and what is due next. Never assessed stands first.
          </p>
        }
        actions={
          of !== null && (
            <>
              <ActionLink href={of.kind === 'airframe' ? `/positions/${of.id}` : `/components/${of.id}`}>
                {of.kind === 'airframe' ? 'Airframe' : 'Component'}
              </ActionLink>
              <Button onClick={() => window.print()}>Print</Button>
            </>
          )
        }
      />
      <Whose key={of?.id ?? ''} of={of} />
      {of === null ? (
        <EmptyState>Choose an airframe, or an engine by its serial number.</EmptyState>
      ) : (
        <Sheet key={of.id} of={of} named={named ?? 'it'} />
      )}
    </>
  );
}
