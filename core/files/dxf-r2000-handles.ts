/**
 * Handles of the fixed records of an R2000 file, hexadecimal; entities count up from FIRST_ENTITY.
 * Layers count up from FIRST_LAYER: five operations fit well before the next fixed record.
 */
export const HANDLE = {
  vportTable: '1',
  ltypeTable: '2',
  layerTable: '3',
  styleTable: '4',
  viewTable: '5',
  ucsTable: '6',
  appidTable: '7',
  dimstyleTable: '8',
  blockRecordTable: '9',
  vport: '10',
  byBlock: '11',
  byLayer: '12',
  continuous: '13',
  style: '14',
  appid: '15',
  dimstyle: '16',
  modelRecord: '17',
  paperRecord: '18',
  modelBlock: '19',
  modelBlockEnd: '1A',
  paperBlock: '1B',
  paperBlockEnd: '1C',
  rootDictionary: '20',
  groups: '21',
  layouts: '22',
  lineStyles: '23',
  plotSettings: '24',
  plotStyles: '25',
  plotStyleNormal: '26',
  modelLayout: '27',
  paperLayout: '28',
  lineStyle: '29',
  layerZero: '2F',
} as const;

const FIRST_LAYER = 0x30;
const FIRST_ENTITY = 0x100;

const hex = (value: number): string => value.toString(16).toUpperCase();

export const layerHandle = (index: number): string => hex(FIRST_LAYER + index);
export const entityHandle = (index: number): string => hex(FIRST_ENTITY + index);
