/** What a job costs, as its document and a bid have it. */
import type { Language } from '../../report/show';

export const prices: Language = {
  prices: 'precios',
  amount: 'importe',
  per: 'por',
  items: 'artículos',
  'short-load': 'carga corta',
  labor: 'mano de obra',
  hours: 'horas',
  wage: 'salario',
  crew: 'cuadrilla',
  markup: 'recargo sobre el costo',
  profit: 'utilidad',
  'minimum charge': 'cargo mínimo',
  taxable: 'causa impuesto',
  'tax rate': 'tasa del impuesto',
  equipment: 'equipo',
  subcontract: 'subcontrato',
  fee: 'cargo',
};
