import { ingredient, substitutesFor } from '../../../shared/reference';
import { standIns, substitutionEffect, type ShoppingLine } from '../../../shared/buying';
import { putBackIngredient, substitute } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { Tick } from '../../parts/tick';
import { setBoughtSoFar, setLater, setWho } from './act';
import styles from './shopping.module.css';

/** Who may buy: nobody in particular, the helpers, and every other name on the list. */
export function useShopperChoices(): readonly { readonly value: string; readonly text: string }[] {
  const t = useSpeaker();
  const { event, plan } = useDocument();
  const helpers = event.people.map((p) => ({ value: p.id, text: p.name }));
  const others = plan.buying.shoppers.filter((name) => !helpers.some((h) => h.text === name)).map((name) => ({ value: name, text: name }));
  return [{ value: '', text: t('view.shopping.anybody') }, ...helpers, ...others];
}

const nameOf = (id: string): string => ingredient(id)?.name ?? id;

/** What may stand in for an ingredient, each with what it does to allergens and diets before it is chosen; and the way back. */
function Substitutes({ line }: { readonly line: ShoppingLine }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const rows = substitutesFor(line.ingredient);
  const back = standIns(event).filter((s) => s.now === line.ingredient);
  if (rows.length === 0 && back.length === 0) return null;
  return (
    <div className={styles['instead']}>
      <h4 className={styles['insteadTitle']}>{t('view.shopping.instead')}</h4>
      <ul>
        {back.map((pair) => (
          <li key={pair.before}>
            <Button kind="link" onPress={() => { edit(putBackIngredient(event, pair)); }}>{t('view.shopping.putBack', { before: nameOf(pair.before) })}</Button>
          </li>
        ))}
        {rows.map((row) => {
          const effect = substitutionEffect(event, row);
          return (
            <li key={row.id}>
              <Button kind="link" isDisabled={effect.event === null} label={t('view.shopping.useInstead', { to: nameOf(row.to), from: line.name })} onPress={() => { edit(substitute(event, row.id)); }}>{nameOf(row.to)}</Button>
              {' '}<span>{effect.sentences.map((m) => t.message(m)).join(' ')}</span>
              {row.note !== '' && <span className={styles['for']}>{row.note}</span>}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** Everything else of one line: bought so far, later, who buys it, what could stand in for it. */
export function LinePanel({ line }: { readonly line: ShoppingLine }) {
  const t = useSpeaker();
  const choices = useShopperChoices();
  const { readOnly } = useDocument();
  if (readOnly) return null;
  const who = choices.find((c) => c.text === line.shopper)?.value ?? '';
  return (
    <div className={styles['panel']}>
      <div className={styles['fields']}>
        {line.state !== 'house' && (
          <NumberField label={t('view.shopping.boughtSoFar')} value={line.bought.amount.gt(0) ? line.bought.amount.toNumber() : null} unit={t.loose(`unit.${line.need.unit}`, { count: 2 })} min={0} max={1_000_000} decimals={3}
            onClear={() => setBoughtSoFar(line, null)} onCommit={(v) => setBoughtSoFar(line, v)} />
        )}
        <Choice label={t('view.shopping.who')} value={who} options={choices} onCommit={(v) => setWho(line, v)} />
        <TextField label={t('view.shopping.otherName')} value={line.shopper !== null && who === line.shopper ? line.shopper : ''} onCommit={(v) => setWho(line, v)} />
        {line.state !== 'house' && line.state !== 'bought' && <Tick label={t('view.shopping.later')} checked={line.state === 'later'} onChange={(later) => { setLater(line, later); }} />}
      </div>
      {line.kind === 'food' && <Substitutes line={line} />}
    </div>
  );
}
