import { setShopper } from '../../../shared/edit';
import { shoppingOf } from '../../../shared/event';
import type { Names } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { ViewSection } from '../../parts/view-page';
import { useShopperChoices } from './line-panel';
import styles from './shopping.module.css';

/** Who buys which section; a line may have a shopper of its own under More. */
export function SplitSection({ names }: { readonly names: Names }) {
  const t = useSpeaker();
  const { event, plan, edit, readOnly } = useDocument();
  const choices = useShopperChoices();
  const { shoppers } = shoppingOf(event);
  if (readOnly || choices.length < 2) return null;
  return (
    <ViewSection title={t('view.shopping.splitTitle')} lead={t('view.shopping.splitLead')}>
      <div className={styles['fields']}>
        {plan.buying.sections.map((section) => (
          <Choice key={section} label={names.section(section)} options={choices} value={choices.find((c) => c.value === shoppers.find((s) => s.line === undefined && s.section === section)?.who)?.value ?? ''}
            onCommit={(who) => edit(setShopper(event, { section, name: names.section(section) }, who === '' ? null : who))} />
        ))}
      </div>
    </ViewSection>
  );
}
