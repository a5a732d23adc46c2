import { useQuery } from '@tanstack/react-query';
import { airframeTypesQuery, engineModelsQuery } from '../../../../server/fleet.js';
import type { ActForm } from '../../../../ui/fields/act-form.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { WordsField } from '../../form-parts.js';
import { ANCHORS, COUNTED, COUNTED_FOR } from '../requirement-words.js';
import { NO_PHASE } from './typed-interval.js';
import type { TypedRequirement } from './typed-requirement.js';

interface PartProps {
  readonly form: ActForm<TypedRequirement>;
}

function TypeField({ form }: PartProps) {
  const types = useQuery(airframeTypesQuery).data ?? [];
  return (
    <SelectField
      {...form.field('airframeTypeId')}
      label="Airframe type"
      unchosen="Every type"
      options={types.map(({ id, maker, designation }) => ({ value: id, label: `${maker} ${designation}` }))}
      value={form.typed.airframeTypeId}
      onChange={({ target }) => form.change({ airframeTypeId: target.value, positionNumber: '' })}
    />
  );
}

function PositionField({ form }: PartProps) {
  const types = useQuery(airframeTypesQuery).data ?? [];
  const { airframeTypeId } = form.typed;
  const numbers = new Set(
    types
      .filter(({ id }) => airframeTypeId === '' || id === airframeTypeId)
      .flatMap(({ positions }) => positions.map(({ number }) => number)),
  );
  return (
    <SelectField
      {...form.field('positionNumber')}
      label="Position"
      unchosen="Every engine position"
      options={[...numbers]
        .sort((a, b) => a - b)
        .map((number) => ({ value: String(number), label: number === 0 ? 'APU' : `Position ${number}` }))}
      value={form.typed.positionNumber}
      onChange={({ target }) => form.change({ positionNumber: target.value })}
    />
  );
}

function ModelField({ form }: PartProps) {
  const models = useQuery(engineModelsQuery).data ?? [];
  return (
    <SelectField
      {...form.field('engineModelId')}
      label="Engine model"
      unchosen="Every engine"
      options={models.map(({ id, maker, designation }) => ({ value: id, label: `${maker} ${designation}` }))}
      value={form.typed.engineModelId}
      onChange={({ target }) => form.change({ engineModelId: target.value })}
    />
  );
}

/** What a requirement follows, and which of them. */
export function ScopeFields({ form }: PartProps) {
  const { anchor, countedFrom } = form.typed;
  const follow = (value: string) => {
    const next = ANCHORS.find((each) => each.value === value)?.value ?? 'engine';
    form.change({
      anchor: next,
      countedFrom: COUNTED_FOR[next].includes(countedFrom) ? countedFrom : 'new',
    });
  };
  return (
    <>
      <SelectField
        {...form.field('anchor')}
        label="What it is for"
        options={ANCHORS}
        value={anchor}
        onChange={({ target }) => follow(target.value)}
      />
      {(anchor === 'airframe' || anchor === 'position') && <TypeField form={form} />}
      {anchor === 'position' && <PositionField form={form} />}
      {anchor === 'engine' && <ModelField form={form} />}
      {anchor === 'part' && <WordsField form={form} name="partNumber" label="Part number" mono />}
    </>
  );
}

/** What the first time counts from. */
export function CountedFields({ form }: PartProps) {
  const { anchor, countedFrom } = form.typed;
  return (
    <div className="sub-row-fields">
      <SelectField
        {...form.field('countedFrom')}
        label="The first time counts from"
        options={COUNTED.filter(({ value }) => COUNTED_FOR[anchor].includes(value))}
        value={countedFrom}
        onChange={({ target }) =>
          form.change({
            countedFrom: COUNTED.find(({ value }) => value === target.value)?.value ?? 'new',
            // What counts from the last accomplishment has no first time of its own.
            ...(target.value === 'accomplishment' ? { threshold: NO_PHASE } : {}),
          })
        }
      />
      {countedFrom === 'date' && (
        <WordsField form={form} name="fromOn" label="The date" hint="Year-month-day" mono />
      )}
    </div>
  );
}
