import type { TableName } from './show.ts';

/**
 * Every reference from a row to another, once: the database makes its foreign keys from it, a change its
 * cascades, and the check of a show document its sentences. `owner`: the row goes with what it names;
 * `link`: the link is cleared and the row stays.
 */
export type Reference = { table: TableName; field: string; to: TableName; holds: 'owner' | 'link' };

const owner = (table: TableName, field: string, to: TableName): Reference => ({
  table,
  field,
  to,
  holds: 'owner',
});
const link = (table: TableName, field: string, to: TableName): Reference => ({
  table,
  field,
  to,
  holds: 'link',
});

export const references: readonly Reference[] = [
  owner('boxes', 'rigId', 'rigs'),
  owner('sockets', 'boxId', 'boxes'),
  owner('buses', 'rigId', 'rigs'),
  owner('outputs', 'rigId', 'rigs'),
  link('outputs', 'boxId', 'boxes'),
  owner('devices', 'rigId', 'rigs'),
  link('devices', 'outputId', 'outputs'),
  link('devices', 'secondOutputId', 'outputs'),
  owner('stockItems', 'rigId', 'rigs'),
  owner('cueOutputs', 'rigId', 'rigs'),
  link('cueOutputs', 'outputId', 'outputs'),
  link('cueOutputs', 'secondOutputId', 'outputs'),
  link('cueOutputs', 'busId', 'buses'),
  link('cueOutputs', 'deviceId', 'devices'),
  owner('days', 'rigId', 'rigs'),
  owner('acts', 'dayId', 'days'),
  owner('performers', 'actId', 'acts'),
  owner('sources', 'actId', 'acts'),
  link('sources', 'pairSourceId', 'sources'),
  link('sources', 'performerId', 'performers'),
  owner('mixes', 'actId', 'acts'),
  owner('listeners', 'mixId', 'mixes'),
  owner('listeners', 'performerId', 'performers'),
  link('sources', 'returnsMixId', 'mixes'),
  link('sources', 'returnsCueOutputId', 'cueOutputs'),
  owner('wishes', 'mixId', 'mixes'),
  owner('wishes', 'sourceId', 'sources'),
  owner('wishes', 'sameAsMixId', 'mixes'),
  owner('copies', 'sourceId', 'sources'),
  owner('alternates', 'sourceId', 'sources'),
  link('alternates', 'socketId', 'sockets'),
  owner('decisions', 'actId', 'acts'),
  owner('decisions', 'sourceId', 'sources'),
  owner('decisions', 'mixId', 'mixes'),
  owner('decisions', 'returnSourceId', 'sources'),
  owner('decisions', 'socketId', 'sockets'),
  owner('decisions', 'busId', 'buses'),
  owner('decisions', 'outputId', 'outputs'),
  owner('decisions', 'deviceId', 'devices'),
  owner('decisions', 'cueOutputId', 'cueOutputs'),
  owner('riders', 'actId', 'acts'),
  owner('answers', 'riderId', 'riders'),
  owner('ticks', 'actId', 'acts'),
  link('ownWords', 'actId', 'acts'),
  owner('actRuns', 'actId', 'acts'),
  owner('lineResults', 'actId', 'acts'),
  owner('lineResults', 'sourceId', 'sources'),
  link('lineResults', 'cameSourceId', 'sources'),
  owner('ranLevels', 'actId', 'acts'),
  owner('ranLevels', 'mixId', 'mixes'),
  owner('ranLevels', 'sourceId', 'sources'),
  owner('runNotes', 'actId', 'acts'),
  link('runNotes', 'mixId', 'mixes'),
  link('runNotes', 'sourceId', 'sources'),
];
