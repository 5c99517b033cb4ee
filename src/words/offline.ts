import { offlineWords as english } from './en/offline.ts';
import { spoken } from './spoken.ts';

export const offlineWords = spoken('offline', english);
