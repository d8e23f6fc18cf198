/** The look of the text, from the page's own colours: quiet paper, keys in the colour of action, remarks set back. */
import { HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import type { Extension } from '@codemirror/state';
import { EditorView } from '@codemirror/view';
import { tags } from '@lezer/highlight';

const button = {
  font: '600 var(--t-s)/1.2 var(--f)',
  minHeight: '36px',
  padding: '0 10px',
  border: '1.5px solid var(--ink)',
  borderRadius: 'var(--r2)',
  background: 'var(--ink)',
  color: 'var(--panel)',
  cursor: 'pointer',
};

const look = EditorView.theme({
  '&': {
    height: '100%',
    background: 'var(--raised)',
    color: 'var(--ink)',
    fontSize: '0.84375rem',
  },
  '&.cm-focused': { outline: 'none' },
  '.cm-scroller': { fontFamily: 'var(--mono)', lineHeight: '1.56', overflow: 'auto' },
  '.cm-content': { caretColor: 'var(--ink)', padding: '6px 0 24px' },
  '.cm-line': { padding: '0 12px 0 4px' },
  '.cm-gutters': { background: 'var(--raised)', color: 'var(--ink2)', border: 'none' },
  '.cm-lineNumbers .cm-gutterElement': { minWidth: '30px', padding: '0 4px 0 6px' },
  '.ed-signs': { width: '22px' },
  '.ed-signs .cm-gutterElement': { display: 'grid', placeItems: 'center' },
  '.cm-activeLine': { background: 'color-mix(in srgb, var(--actsoft) 55%, transparent)' },
  '.ed-wrong': { background: 'color-mix(in srgb, var(--caution) 22%, transparent)' },
  '.ed-changed': { background: 'var(--actsoft)', boxShadow: 'inset 4px 0 0 var(--act)' },
  '.ed-wave': { textDecoration: 'underline wavy 2px var(--cautionedge)', textUnderlineOffset: '3px' },
  '.ed-advice': { textDecorationStyle: 'dotted' },
  '.mk-error path': { fill: 'var(--ink)' },
  '.mk-error text': { fill: 'var(--panel)', font: '800 12px var(--f)' },
  '.mk-warning path': { fill: 'var(--caution)', stroke: 'var(--cautionedge)', strokeWidth: '1.4' },
  '.mk-warning text': { fill: 'var(--cautionink)', font: '800 10px var(--f)' },
  '.cm-tooltip': {
    background: 'var(--panel)',
    color: 'var(--ink)',
    border: '2px solid var(--ink)',
    borderRadius: 'var(--r2)',
    boxShadow: 'var(--e2)',
    font: '400 var(--t-s)/1.42 var(--f)',
    overflow: 'hidden',
    maxWidth: 'min(460px, 92vw)',
  },
  '.ed-card': { padding: '9px 12px' },
  '.ed-card + .ed-card': { borderTop: '1px solid var(--line)' },
  '.ed-card p': { margin: '0', overflowWrap: 'anywhere' },
  '.ed-card svg': { verticalAlign: '-3px', marginRight: '6px' },
  '.ed-card button': { ...button, marginTop: '8px' },
  '.cm-tooltip-autocomplete > ul': { fontFamily: 'var(--f)', maxHeight: '15em', minWidth: '200px' },
  '.cm-tooltip-autocomplete > ul > li': {
    padding: '5px 10px',
    display: 'flex',
    gap: '14px',
    justifyContent: 'space-between',
    lineHeight: '1.3',
  },
  '.cm-tooltip-autocomplete > ul > li[aria-selected]': { background: 'var(--ink)', color: 'var(--panel)' },
  '.cm-completionMatchedText': { textDecoration: 'underline' },
  '.cm-completionDetail': { fontStyle: 'normal', opacity: '0.9', marginLeft: '0' },
  '.cm-tooltip.cm-completionInfo': { padding: '7px 10px', maxWidth: '280px' },
  '@media (forced-colors: active)': {
    '.cm-activeLine': { outline: '1px solid CanvasText', outlineOffset: '-1px' },
    '.ed-wrong': { outline: '2px solid CanvasText', outlineOffset: '-2px' },
    '.cm-tooltip-autocomplete > ul > li[aria-selected]': {
      background: 'Highlight',
      color: 'HighlightText',
      forcedColorAdjust: 'none',
    },
    '.mk-error path': { fill: 'CanvasText' },
    '.mk-error text': { fill: 'Canvas' },
    '.mk-warning path': { fill: 'Canvas', stroke: 'CanvasText' },
    '.mk-warning text': { fill: 'CanvasText' },
  },
});

const letters = HighlightStyle.define([
  { tag: tags.definition(tags.propertyName), color: 'var(--act)', fontWeight: '650' },
  { tag: tags.comment, color: 'var(--ink2)', fontStyle: 'italic' },
  { tag: [tags.separator, tags.squareBracket, tags.brace, tags.punctuation], color: 'var(--ink2)' },
]);

export const editorTheme: Extension = [look, syntaxHighlighting(letters)];
