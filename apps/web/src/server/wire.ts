import type { components } from '@strutbook/api-client/schema.gen.js';

type Shapes = components['schemas'];

// The server's own shapes, by the words the screens use for them.
export type Counters = Shapes['CountersDto'];
export type Tightest = Shapes['TightestPartDto'];
export type InstalledEngine = Shapes['InstalledEngineDto'];
export type PositionView = Shapes['PositionCardDto'];
export type BoardAirframe = Shapes['BoardRowDto'];
export type AirframePositions = Shapes['PositionsDto'];
export type ComponentView = Shapes['ComponentDto'];
export type ComponentKind = ComponentView['kind'];
export type Place = Shapes['PlaceDto'];
export type Life = Shapes['LifeDto'];
export type Part = Shapes['PartDto'];
export type Slot = Shapes['SlotDto'];
export type Stay = Shapes['StayDto'];
export type Objection = Shapes['ObjectionDto'];
export type ChangeRequest = Shapes['ChangeRequestDto'];
export type ChangeSlot = ChangeRequest['slot'];
export type Boundary = Shapes['BoundaryDto'];
export type ChangePreview = Shapes['ChangePreviewDto'];
export type ChangedComponent = Shapes['ChangedComponentDto'];
export type MovedComponent = Shapes['MovedComponentDto'];
export type PackageChange = Shapes['PackageChangeDto'];
export type ReleaseCheck = Shapes['ReleaseCheckDto'];
export type ReleaseNote = Shapes['ReleaseNoteDto'];
export type Passed = Shapes['PassedDto'];
export type DueRow = Shapes['DueRowDto'];
export type DueBasis = Shapes['DueBasisDto'];
export type DueTotals = Shapes['DueTotalsDto'];
