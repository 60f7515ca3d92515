import Form from '@rjsf/core';
import { customizeValidator } from '@rjsf/validator-ajv8';
import Ajv2020 from 'ajv/dist/2020.js';
import { loadCalculation } from 'flatwork-reckoner/catalog';
import { worksheet } from 'flatwork-reckoner/report';
import { createElement, useState } from 'react';
import { createRoot } from 'react-dom/client';

const validator = customizeValidator({ AjvClass: Ajv2020 });

/** Issues of a refused input as the form library wants them: each under its field. */
function errorsOf({ issues }) {
  const errors = {};
  for (const { path, sentence } of issues) {
    let place = errors;
    for (const [, name] of path.matchAll(/([^.[\]]+)/g)) {
      place[name] ??= {};
      place = place[name];
    }
    place.__errors = [...(place.__errors ?? []), sentence];
  }
  return errors;
}

function App({ calculation, schema }) {
  const [formData, setFormData] = useState({});
  const [sheet, setSheet] = useState('');
  const [extraErrors, setExtraErrors] = useState({});
  const submit = ({ formData: filled }) => {
    const attempt = calculation.attempt(filled);
    setFormData(filled);
    setExtraErrors(attempt.ok ? {} : errorsOf(attempt.error));
    setSheet(attempt.ok ? worksheet(attempt.result) : '');
    globalThis.submitted = { filled, ok: attempt.ok, issues: attempt.ok ? [] : attempt.error.issues };
  };
  return [
    createElement(Form, {
      key: 'form',
      schema,
      validator,
      formData,
      extraErrors,
      noHtml5Validate: true,
      showErrorList: false,
      onChange: ({ formData: filled }) => setFormData(filled),
      onSubmit: submit,
      // Errors are shown at their fields; by itself the library writes them to the console too.
      onError: () => {},
      // What may be left out is left out until something is typed into it.
      experimental_defaultFormStateBehavior: { emptyObjectFields: 'populateRequiredDefaults' },
    }),
    createElement('pre', { key: 'sheet', id: 'sheet' }, sheet),
  ];
}

const id = new URLSearchParams(location.search).get('id');
const { calculation, formSchema } = await loadCalculation(id);
globalThis.schema = formSchema;
createRoot(document.querySelector('#app')).render(createElement(App, { calculation, schema: formSchema }));
