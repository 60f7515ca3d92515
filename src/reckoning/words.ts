/** Words as data, for calculations; they stand with quantities because faults of reading are made of them too. */
export * from '../quantity/words';
