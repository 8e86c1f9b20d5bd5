import { mount } from 'svelte';
import App from './App.svelte';
import { Desk } from './desk/desk.svelte.ts';
import './look/base.css';
import { openIndexedDb, openMemory, type Store } from './store/index.ts';
import { keepOffline } from './shell/offline.ts';

const target = document.getElementById('table');
if (!target) throw new Error('the page has no table');

/** A browser that keeps nothing (some private windows) still gets a table. */
async function openStore(): Promise<{ store: Store; isKept: boolean }> {
  try {
    return { store: await openIndexedDb(), isKept: true };
  } catch {
    return { store: openMemory(), isKept: false };
  }
}

const { store, isKept } = await openStore();
const desk = await Desk.open(store);
mount(App, { target, props: { desk } });
if (isKept) void desk.askForDurable();
else desk.durable = 'nothing kept';
void keepOffline(desk);
