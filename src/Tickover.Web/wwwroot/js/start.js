// @ts-check
/** Starts what the page has. Every page works without this file: links and forms go to the server. */
import { followSwaps } from "./swap.js";
import { tapMaps } from "./map.js";
import { keepDrafts } from "./draft.js";
import { revealFields } from "./reveal.js";
import { fillCode } from "./pair.js";
import { followOutbox } from "./outbox.js";
import { followKept } from "./refresh.js";
import { showTray } from "./tray.js";
import { startSending } from "./sender.js";
import { askAboutFigures } from "./plausible.js";
import { openKeypads } from "./keypad.js";
import { followHolds } from "./hold.js";
import { takePhotographs } from "./photo.js";
import { followPrints } from "./print.js";
import { workOffline } from "./offline.js";
import { followWaits } from "./wait.js";
import { followRounds } from "./balance.js";
import { followPedal } from "./pedal.js";

askAboutFigures();
followSwaps();
tapMaps();
keepDrafts();
revealFields();
followOutbox();
followKept();
showTray();
openKeypads();
followHolds();
followPrints();
takePhotographs();
followRounds();
startSending();
fillCode();
workOffline();
followWaits();
followPedal();
