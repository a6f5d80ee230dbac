import { ChoosePage } from './choose-page';
import { EditPage } from './edit-page';
import type { GoTo, RecipePage } from './page';
import { PastePage } from './paste-page';
import { SettlePage } from './settle-page';

/** The pages of the view Menu about recipes. */
export function RecipePages({ page, go }: { readonly page: RecipePage; readonly go: GoTo }) {
  switch (page.kind) {
    case 'choose': return <ChoosePage go={go} />;
    case 'paste': return <PastePage go={go} />;
    case 'settle': return <SettlePage imported={page.imported} go={go} />;
    case 'edit': return <EditPage key={page.recipe} id={page.recipe} go={go} />;
  }
}
