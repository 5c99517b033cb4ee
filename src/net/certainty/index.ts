export { certain, classOf } from './certain.ts';
export { certaintyBy, logOdds, type Curve } from './curve.ts';
