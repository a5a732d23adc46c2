import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { calendarDate } from '../../../format/utc-date.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import { useMay } from '../../../server/authority.js';
import { COMPONENTS_KEY } from '../../../server/components.js';
import { useOfflineSince } from '../../../server/connection.js';
import { type AirframeType, type EngineModel, FLEET_KEY } from '../../../server/fleet.js';
import { Button } from '../../../ui/actions/button.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { VoidDialog, type Voiding } from '../void-dialog.js';
import { RuleRevisionForm } from './rule-revision-form.js';
import { ruleInWords } from './rule-words.js';

type Revision = components['schemas']['RuleRevisionDto'];

const RULES_KEY = [...FLEET_KEY, 'cycle-rules'] as const;
const COUNTED_BY = [FLEET_KEY, COMPONENTS_KEY, ['due'], ['history']] as const;

const revisionsQuery = (modelId: string) =>
  queryOptions({
    queryKey: [...RULES_KEY, modelId],
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/engine-models/{id}/cycle-rules', { params: { path: { id: modelId } }, signal }),
      ),
  });

const voidRule = async ({ id, reason }: Voiding, headers: ActHeaders) =>
  dataOrThrow(
    await api.POST('/api/cycle-rules/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );

function Rule({ rule }: { readonly rule: Revision }) {
  return (
    <>
      {ruleInWords(rule)}
      {rule.voided && <strong> Voided: “{rule.voidReason ?? 'no reason recorded'}”</strong>}
    </>
  );
}

const columnsFor = (
  kind: EngineModel['kind'],
  onVoid: ((rule: Revision) => void) | null,
): readonly Column<Revision>[] => [
  {
    id: 'from',
    header: 'From',
    namesRow: true,
    cell: ({ effectiveOn }) => (effectiveOn === null ? 'Always' : calendarDate(effectiveOn)),
  },
  {
    id: 'type',
    header: 'On',
    cell: ({ airframeType }) =>
      airframeType ?? (kind === 'apu' ? 'Its own counter' : 'Any other type, test cells'),
  },
  { id: 'rule', header: 'Rule', cell: (rule) => <Rule rule={rule} /> },
  { id: 'source', header: 'Document', cell: ({ source, revision }) => `${source}, revision ${revision}` },
  {
    id: 'state',
    header: 'Counts today',
    cell: ({ inForce }) => (inForce ? <StatusMark status="in-limits" word="Yes" /> : 'No'),
  },
  ...(onVoid === null
    ? []
    : [
        {
          id: 'acts',
          header: 'What can be done',
          cell: (rule: Revision) =>
            rule.voided ? null : (
              <Button
                kind="quiet"
                aria-label={`Void the rule from ${rule.effectiveOn ?? 'always'} on`}
                onClick={() => onVoid(rule)}
              >
                Void
              </Button>
            ),
        },
      ]),
];

interface RuleHistoryProps {
  readonly model: EngineModel;
  readonly types: readonly AirframeType[];
}

/** All revisions of a model's cycle rules, each from its day on, and a way to record the next. */
export function RuleHistory({ model, types }: RuleHistoryProps) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const query = useQuery(revisionsQuery(model.id));
  const [asked, setAsked] = useState<'add' | Revision | null>(null);
  const close = () => setAsked(null);
  return (
    <>
      <Answered query={query} doing="Reading the cycle rules" lines={3}>
        {({ rows }) => (
          <DataTable
            caption={`Cycle rules of ${model.designation}, newest first`}
            columns={columnsFor(model.kind, may ? setAsked : null)}
            rows={rows}
            rowKey={({ id }) => id}
            struck={({ voided }) => voided}
          />
        )}
      </Answered>
      {may && (
        <div className="no-print">
          <Button offBecause={off} onClick={() => setAsked('add')}>
            Record a revision
          </Button>
        </div>
      )}
      {asked === 'add' && (
        <SheetDialog
          title={`A revision of a rule of ${model.designation}`}
          shape="sheet"
          open
          onClose={close}
        >
          <RuleRevisionForm
            modelId={model.id}
            types={types}
            refresh={COUNTED_BY}
            onDone={() => {
              announce('The revision was recorded. What ran since its day is counted by it.');
              close();
            }}
          />
        </SheetDialog>
      )}
      {asked !== null && asked !== 'add' && (
        <VoidDialog
          id={asked.id}
          what="cycle rule"
          consequence="It stays on record, struck through, with your reason. What ran since its day is counted again by the rule before it; without one, cycles are not verified."
          perform={voidRule}
          refresh={COUNTED_BY}
          onClose={close}
        />
      )}
    </>
  );
}
