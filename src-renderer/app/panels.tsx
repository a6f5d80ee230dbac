import { useState, type ReactNode } from 'react';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { call } from '../bridge';
import { Button } from '../parts/button';
import { useDocument, useOpenDocument } from './document';
import { EventList } from './event-list';
import { leaving, lookAtOther, nameToSave, save, saveAs, startNew, write } from './files';
import { letGo } from './kept-copies';
import { Preferences } from './preferences';
import { sessionStore, useSession } from './session';
import { useSpeaker } from './speak';
import styles from './panels.module.css';

const close = (): void => sessionStore.set({ panel: null });

/** The panels that stand over the view: event file, name of a new file, unsaved work. */
export function Panels() {
  const { panel } = useSession();
  const t = useSpeaker();
  if (panel === null) return null;
  switch (panel.kind) {
    case 'file': return <Sheet title={t('panel.event')}><FilePanel /></Sheet>;
    case 'settings': return <Sheet title={t('panel.preferences')}><Preferences /></Sheet>;
    case 'save': return <Sheet title={t('panel.saveAs')}><SavePanel /></Sheet>;
    case 'changed': return <Sheet title={t('panel.changed')}><ChangedPanel path={panel.path} /></Sheet>;
    case 'unsaved': return <Sheet title={t('panel.unsaved')}><UnsavedPanel goOn={panel.goOn} /></Sheet>;
  }
}

function Sheet({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const t = useSpeaker();
  return (
    <ModalOverlay className={styles['over'] ?? ''} isOpen isDismissable onOpenChange={(isOpen) => { if (!isOpen) close(); }}>
      <Modal className={styles['modal'] ?? ''}>
        <Dialog className={styles['sheet'] ?? ''}>
          <div className={styles['head']}>
            <Heading slot="title" className={styles['title'] ?? ''}>{title}</Heading>
            <button type="button" className={styles['close']} onClick={close} aria-label={t('part.close')}>×</button>
          </div>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function FilePanel() {
  const t = useSpeaker();
  const open = useOpenDocument();
  return (
    <>
      <div className={styles['actions']}>
        <Button onPress={() => leaving(startNew)}>{t('panel.new')}</Button>
        {open !== null && <Button onPress={() => void save()}>{t('shell.save')}</Button>}
        {open !== null && <Button onPress={() => void saveAs()}>{t('panel.saveAs')}</Button>}
        {open !== null && <Button onPress={() => sessionStore.set({ panel: { kind: 'settings' } })}>{t('panel.preferences')}</Button>}
      </div>
      <EventList />
    </>
  );
}

function SavePanel() {
  const t = useSpeaker();
  const open = useDocument();
  const [name, setName] = useState(() => nameToSave(open));
  const [taken, setTaken] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const go = async (): Promise<void> => {
    if (name.trim() === '') { setProblem(t('panel.nameEmpty')); return; }
    const answer = await call('events.chooseSave', { name: name.trim() });
    if (!answer.ok) { setProblem(t.loose(answer.problem.message)); return; }
    if (answer.value.path === null) return;
    if (open.readOnly && answer.value.path === open.file.path) { setProblem(`${t('host.newer-format', { path: answer.value.path })} ${t('host.newer-format.mend')}`); return; }
    if (answer.value.taken && taken !== answer.value.path) { setTaken(answer.value.path); return; }
    await write(answer.value.path, null);
  };
  return (
    <form className={styles['form']} onSubmit={(e) => { e.preventDefault(); void go(); }}>
      <label htmlFor="save-name">{t('panel.fileName')}</label>
      <input id="save-name" className={styles['name']} value={name} maxLength={120} autoComplete="off" aria-describedby="save-note" onChange={(e) => { setName(e.currentTarget.value); setTaken(null); setProblem(null); }} />
      <p id="save-note" role="status">{problem ?? (taken === null ? t('panel.saveFolder') : t('panel.taken', { name: name.trim() }))}</p>
      <div className={styles['actions']}>
        <Button kind="primary" onPress={() => void go()}>{taken === null ? t('shell.save') : t('panel.writeOver')}</Button>
        <Button onPress={close}>{t('panel.cancel')}</Button>
      </div>
    </form>
  );
}

function ChangedPanel({ path }: { readonly path: string }) {
  const t = useSpeaker();
  const { event } = useDocument();
  return (
    <>
      <p>{t('panel.changedText', { title: event.title })}</p>
      <div className={styles['actions']}>
        <Button kind="primary" onPress={() => { close(); void saveAs(); }}>{t('panel.saveBeside')}</Button>
        <Button onPress={() => void write(path, null)}>{t('panel.writeOver')}</Button>
        <Button onPress={() => void lookAtOther(path)}>{t('panel.lookAtOther')}</Button>
      </div>
    </>
  );
}

function UnsavedPanel({ goOn }: { readonly goOn: () => void }) {
  const t = useSpeaker();
  const { event, openId } = useDocument();
  const discard = (): void => {
    close();
    letGo(openId);
    goOn();
  };
  return (
    <>
      <p>{t('panel.unsavedText', { title: event.title })}</p>
      <div className={styles['actions']}>
        <Button kind="primary" onPress={() => void save().then((done) => { if (done) { close(); goOn(); } })}>{t('panel.saveFirst')}</Button>
        <Button onPress={discard}>{t('panel.discard')}</Button>
        <Button onPress={close}>{t('panel.cancel')}</Button>
      </div>
    </>
  );
}
