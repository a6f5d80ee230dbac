import { useEffect, useRef, useState } from 'react';
import { roleIds } from '../../../../shared/event';
import { proposeStepTimes, type ImportedRecipe, type StepTime } from '../../../../shared/exchange';
import { useDocument } from '../../../app/document';
import { useKept } from '../../../app/kept-state';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { Choice } from '../../../parts/choice';
import { ViewPage, ViewSection } from '../../../parts/view-page';
import { AddLine } from './add-line';
import { amountEntry } from './amount-field';
import { firstAnswer, openLines, typedAnswer, type LineAnswer } from './line-answer';
import type { GoTo } from './page';
import { PlainField } from './plain-field';
import { putOnMenu } from './put-on-menu';
import { finish, firstForm, weighed, type FormField, type SettleForm } from './settle-form';
import { SettleRow } from './settle-row';
import { SettleSteps } from './settle-steps';
import styles from './recipes.module.css';

/** A recipe being taken in: what it says, what is open in it, and what it does not say. It goes on the menu once all is settled. */
export function SettlePage({ imported, go }: { readonly imported: ImportedRecipe; readonly go: GoTo }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const [answers, setAnswers] = useKept<readonly LineAnswer[]>(imported, 'answers', () => imported.lines.map(firstAnswer));
  const [form, setForm] = useKept<SettleForm>(imported, 'form', () => firstForm(imported, (amount) => amountEntry(t, amount)));
  const [times, setTimes] = useKept<readonly StepTime[]>(imported, 'times', () => proposeStepTimes(imported));
  const [isMadeHers, setMadeHers] = useState(form.made !== '');
  /** How often she asked to have it on the menu; each time the first thing missing is shown. */
  const [asked, setAsked] = useState(0);
  const [refused, setRefused] = useState<string | null>(null);
  const page = useRef<HTMLDivElement>(null);
  useEffect(() => { if (asked > 0) showFirstOpen(page.current); }, [asked]);
  const result = finish(event, imported, answers, form, times);
  const problemAt = (field: FormField): string | null => {
    const problem = asked > 0 && 'problems' in result ? result.problems[field] : undefined;
    return problem === undefined ? null : t.message(problem);
  };
  const patch = (part: Partial<SettleForm>): void => setForm((had) => ({ ...had, ...part }));
  const weight = form.made.trim() === '' ? weighed(answers) : null;
  const put = (): void => {
    setAsked((had) => had + 1);
    if ('problems' in result) return;
    const problem = edit(putOnMenu(event, result.recipe));
    if (problem === null) go(null);
    else setRefused(t.message(problem));
  };
  const isBlank = imported.name === '' && imported.lines.length === 0;
  const missing = asked > 0 && 'problems' in result ? labelled.filter(([field]) => result.problems[field] !== undefined).map(([, label]) => t(label)) : [];
  const finishProblems = [...(missing.length === 0 ? [] : [t('view.recipes.notYet', { fields: missing })]), problemAt('lines') ?? refused].filter((one) => one !== null);
  return (
    <ViewPage title={form.name.trim() || t('view.recipes.new')} lead={isBlank ? t('view.recipes.newLead') : t('view.recipes.settleLead', { open: openLines(answers) })}
      actions={<Button onPress={() => go(null)}>{t('view.recipes.back')}</Button>}>
      <div ref={page} className={styles['whole']}>
        <div className={styles['fields']}>
          <div className={styles['wide']}><PlainField label={t('view.recipes.name')} value={form.name} error={problemAt('name')} onChange={(name) => patch({ name })} /></div>
          <RoleField role={form.role} problem={problemAt('role')} onCommit={(role) => patch({ role })} />
          <div className={styles['short']}><PlainField label={t('view.recipes.portions')} value={form.portions} most={12} error={problemAt('portions')} onChange={(portions) => patch({ portions })} /></div>
          <div className={styles['short']}><PlainField label={t('view.recipes.yield')} value={isMadeHers || weight === null ? form.made : amountEntry(t, weight.amount)} most={40} error={problemAt('made')} onChange={(made) => { setMadeHers(true); patch({ made }); }} /></div>
          {weight !== null && <p className={styles['aside']}>{isMadeHers ? `${t.formats.amount(weight.amount)}: ` : ''}{t('view.recipes.yieldWeighed', { without: weight.without.map((name) => name.toLowerCase()) })}</p>}
          {imported.yield.texts.length > 0 && <p className={styles['aside']}>{t('view.recipes.yieldWritten', { text: imported.yield.texts.join(', ') })}</p>}
        </div>
        <ViewSection title={t('view.recipes.lines')}>
          <ol className={styles['lines']}>
            {answers.map((answer, at) => (
              <SettleRow key={`${at} ${answer.proposal.line.text}`} answer={answer} onChange={(settled) => setAnswers((had) => had.map((one, i) => (i === at ? { ...one, settled } : one)))} />
            ))}
          </ol>
          <AddLine onAdd={(text) => setAnswers((had) => [...had, typedAnswer(text)])} />
        </ViewSection>
        {times.length > 0 && (
          <ViewSection title={t('view.recipes.steps')} lead={t('view.recipes.stepsKept', { n: times.length })}>
            <SettleSteps steps={imported.steps.slice(0, times.length)} times={times} onChange={setTimes} />
          </ViewSection>
        )}
        <div className={styles['finish']}>
          <Button kind="primary" onPress={put}>{t('view.recipes.finish')}</Button>
          {finishProblems.length > 0 && <p className={styles['problem']} role="alert">{finishProblems.join(' ')}</p>}
        </div>
      </div>
    </ViewPage>
  );
}

function RoleField({ role, problem, onCommit }: { readonly role: string; readonly problem: string | null; readonly onCommit: (role: string) => void }) {
  const t = useSpeaker();
  return (
    <div className={styles['role']}>
      <Choice<string> label={t('view.recipes.role')} value={role} error={problem} onCommit={(next) => { onCommit(next); return null; }}
        options={[...(role === '' ? [{ value: '', text: t('view.recipes.roleChoose') }] : []), ...roleIds.map((id) => ({ value: id as string, text: t(`view.recipes.role.${id}`) }))]} />
    </div>
  );
}

/** Fields above the ingredients, in their order. */
const labelled = [['name', 'view.recipes.name'], ['role', 'view.recipes.role'], ['portions', 'view.recipes.portions'], ['made', 'view.recipes.yield']] as const;

/** Brings the first field that wants an answer into sight, ready to be typed in. */
function showFirstOpen(page: HTMLElement | null): void {
  const first = page?.querySelector<HTMLElement>('[aria-invalid="true"]') ?? page?.querySelector<HTMLElement>('fieldset input');
  first?.scrollIntoView({ block: 'center' });
  first?.focus({ preventScroll: true });
}
