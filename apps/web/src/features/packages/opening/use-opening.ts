import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useAct } from '../../../server/act.js';
import { announce } from '../../../ui/messages/announcements.js';
import { fieldMessages } from '../../../ui/messages/field-messages.js';
import { useOrderPlaces } from '../order/places-there.js';
import { openPackage } from './open-package.js';
import {
  type Faults,
  faultsIn,
  type OpeningDraft,
  openingRequest,
  orderOn,
  type Section,
  sectionOfField,
  sectionsOf,
} from './opening-draft.js';

export type Opening = ReturnType<typeof useOpening>;

/** The form in its sections: what is typed, where one is, what is wrong, and the act at its end. */
export function useOpening(start: OpeningDraft) {
  const navigate = useNavigate();
  const [draft, setDraft] = useState(start);
  const [at, setAt] = useState<Section>('work');
  const [reached, setReached] = useState(0);
  const [faults, setFaults] = useState<Faults>({});
  const [attempt, setAttempt] = useState(0);
  const place = useOrderPlaces(orderOn(draft), draft.order).chosen;
  const there = place?.there ?? null;
  const sections = sectionsOf(draft);
  const act = useAct({
    perform: openPackage,
    refresh: [['packages']],
    onDone: ({ id, number }) => {
      announce(`${number} is open.`);
      void navigate({ to: '/packages/$packageId', params: { packageId: id } });
    },
  });
  const goTo = (section: Section) => {
    setFaults({});
    setAt(section);
    setReached((before) => Math.max(before, sections.indexOf(section)));
  };
  /** Shows what is wrong in a section; false when nothing is. */
  const fails = (section: Section): boolean => {
    const found = faultsIn(section, draft, there);
    if (Object.keys(found).length === 0) return false;
    setAt(section);
    setFaults(found);
    setAttempt((before) => before + 1);
    return true;
  };
  const next = () => {
    act.reset();
    const after = sections[sections.indexOf(at) + 1];
    if (!fails(at) && after !== undefined) goTo(after);
  };
  const open = (title: string) => {
    if (sections.some(fails)) return;
    setFaults({});
    setAttempt((before) => before + 1);
    act.mutate(openingRequest(draft, title, there), {
      onError: (error) => {
        const [first] = fieldMessages(error).flatMap(({ path }) => (path === null ? [] : [path]));
        if (first !== undefined) setAt(sectionOfField(first));
      },
    });
  };
  const set = (change: Partial<OpeningDraft>) => setDraft((before) => ({ ...before, ...change }));
  const told = fieldMessages(act.error);
  const said = (path: string): string | null =>
    faults[path] ?? told.find((entry) => entry.path === path)?.message ?? null;
  return { draft, set, at, goTo, reached, sections, faults, told, attempt, said, next, open, act, place };
}
