import { Fragment } from 'react';
import { roleIds } from '../../../../shared/event';
import type { Figure } from '../../../../shared/figure';
import { amountOf, amountText } from '../../../../shared/measure';
import { massBalance } from '../../../../shared/menu';
import { ingredientName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { FigureButton } from '../../../parts/figure-button';
import { Mark } from '../../../parts/mark';
import { NumberField } from '../../../parts/number-field';
import { TextField } from '../../../parts/text-field';
import { AmountField } from './amount-field';
import type { PartProps } from './change';
import { roleMeans } from './role-means';
import styles from './recipes.module.css';


/** Name, place in the meal, what it makes; and whether that fits what goes in. */
export function Basics({ recipe, change }: PartProps) {
  const t = useSpeaker();
  const { amount, portions } = recipe.yield;
  return (
    <section aria-label={t('view.recipes.basics')}>
      <div className={styles['fields']}>
        <div className={styles['wide']}><TextField label={t('view.recipes.name')} value={recipe.name} onCommit={(name) => change({ name })} /></div>
        <Choice label={t('view.recipes.role')} value={recipe.role} onCommit={(role) => change({ role })} options={roleIds.map((value) => ({ value, text: t(`view.recipes.role.${value}`) }))} />
        <NumberField label={t('view.recipes.portions')} value={portions} min={0.1} max={10000} decimals={2} onCommit={(next) => change({ yield: { ...recipe.yield, portions: next } })} />
        <div className={styles['short']}><AmountField label={t('view.recipes.yield')} value={amount} bareUnit={amount.unit} onCommit={(next) => change({ yield: { ...recipe.yield, amount: { ...next } } })} /></div>
      </div>
      <Mass recipe={recipe} />
      <p className={styles['mass']}>{t('view.recipes.roleMeans', roleMeans(recipe))}</p>
    </section>
  );
}

const sentences = {
  fits: 'view.recipes.massKnown', unknown: 'view.recipes.massKnown', swells: 'view.recipes.massSwells', more: 'view.recipes.massMore', less: 'view.recipes.massLess',
} as const;

/** A sentence about weights with its two figures in their places; each opens its working. */
function Mass({ recipe }: Pick<PartProps, 'recipe'>) {
  const t = useSpeaker();
  const { inside, promised, verdict, unweighed } = massBalance(recipe);
  const places = { inside: '{inside}', promised: '{promised}' };
  const words = promised === null ? t('view.recipes.massOpen', places) : t(sentences[verdict], places);
  const isOff = verdict === 'more' || verdict === 'less';
  const weight = (figure: Figure, title: string) => <FigureButton figure={figure} title={title}>{t.formats.amount(amountText(amountOf(figure.value, 'g')))}</FigureButton>;
  return (
    <p className={isOff ? styles['off'] : styles['mass']} role="status" data-verdict={verdict}>
      {isOff && <Mark kind="watch" />}{' '}
      {words.split(/(\{inside\}|\{promised\})/).map((part) => (
        <Fragment key={part}>{part === places.inside ? weight(inside, t('view.recipes.massInside')) : part === places.promised && promised !== null ? weight(promised, t('view.recipes.massPromised')) : part}</Fragment>
      ))}
      {unweighed.length > 0 && ` ${t('view.recipes.massUnweighed', { foods: t.formats.list(unweighed.map(ingredientName)) })}`}
    </p>
  );
}
