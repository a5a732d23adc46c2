import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type NewAirframeType = Shapes['NewAirframeTypeDto'];
export type NewAirframe = Shapes['NewAirframeDto'];
export type NewEngineModel = Shapes['NewEngineModelDto'];
export type NewCycleRule = Shapes['NewCycleRuleDto'];
export type NewLifeLimit = Shapes['NewLifeLimitDto'];
export type NewLocation = Shapes['NewLocationDto'];
export type NewComponent = Shapes['NewComponentDto'];
export type NewOpening = Shapes['NewOpeningDto'];
export type NewRatingChange = Shapes['NewRatingChangeDto'];
export type NewReset = Shapes['NewResetDto'];
export type NewPlacement = Shapes['PlacementDto'];
export type BoundaryWords = Shapes['BoundaryDto'];

// Each sends one act. Throws: ProblemError.

export const addAirframeType = async (body: NewAirframeType, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/airframe-types', { body, headers }));

export const addAirframe = async (body: NewAirframe, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/airframes', { body, headers }));

export const addEngineModel = async (body: NewEngineModel, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/engine-models', { body, headers }));

export const addLifeLimit = async (body: NewLifeLimit, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/life-limits', { body, headers }));

export const addLocation = async (body: NewLocation, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/locations', { body, headers }));

export const addComponent = async (body: NewComponent, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/components', { body, headers }));

export const addOpening = async (body: NewOpening, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/openings', { body, headers }));

export const changeRating = async (body: NewRatingChange, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/rating-changes', { body, headers }));

export const addReset = async (body: NewReset, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/resets', { body, headers }));

export const place = async (body: NewPlacement, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/placements', { body, headers }));
