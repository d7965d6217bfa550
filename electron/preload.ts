import { contextBridge, ipcRenderer } from 'electron';
import type { Bridge } from '../core/contract/bridge.ts';
import { frameChannel } from './frame-channel.ts';

/** The bridge of the page: frames out and frames in, and nothing else of Electron. */
const bridge: Bridge = {
  send: (frame) => ipcRenderer.send(frameChannel, frame),
  onFrame: (take) => {
    ipcRenderer.on(frameChannel, (_event, frame: string) => take(frame));
  },
};

contextBridge.exposeInMainWorld('foldbook', bridge);
