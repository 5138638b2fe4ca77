/** Runs in the page's process before the page, with Electron's few functions for it and nothing of Node. */
import { contextBridge, ipcRenderer } from 'electron';
import { exposeBridge } from './expose-bridge.ts';

exposeBridge({ contextBridge, ipcRenderer });
