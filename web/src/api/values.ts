// Made from openapi.json by `npm run api`. Changes belong in the server, which describes itself.

export const FACETS = [
  'setting',
  'action',
  'rigging',
  'effects',
  'vehicles',
  'cast',
  'medical',
  'camera',
  'conditions',
  'rehearsals',
] as const;

export const HAZARDS = [
  'height',
  'line',
  'gas',
  'fire',
  'charge',
  'glass',
  'vehicle',
  'weapon',
  'water',
  'animal',
  'minor',
  'lock_off',
] as const;

export const ROLES = [
  'coordinator',
  'performer',
  'rigging',
  'effects',
  'fire',
  'medic',
  'first_ad',
  'vehicles',
  'armourer',
  'marine',
  'animals',
  'camera',
  'engineer',
  'guardian',
  'production',
  'observer',
] as const;

export const PERMISSIONS = [
  'read_production',
  'read_personal',
  'read_medical',
  'edit_people',
  'edit_plans',
  'sign_off',
  'raise_hold',
  'release_hold',
  'log_day',
  'manage_members',
  'read_trail',
  'change_policy',
] as const;

export const SEVERITIES = [
  'catastrophic',
  'critical',
  'marginal',
  'negligible',
] as const;

export const PROBABILITIES = [
  'frequent',
  'probable',
  'occasional',
  'remote',
  'improbable',
  'eliminated',
] as const;

export const CONTROL_KINDS = [
  'remove',
  'substitute',
  'engineer',
  'organise',
  'protect',
] as const;
