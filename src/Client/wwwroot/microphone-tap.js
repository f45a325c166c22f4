// Runs beside the page's own work, so that no sample is lost while the page is busy.

const BLOCK = 4096;

class Tap extends AudioWorkletProcessor {
  #block = new Float32Array(BLOCK);
  #filled = 0;

  process([[samples]]) {
    for (const sample of samples ?? []) {
      this.#block[this.#filled++] = sample;
      if (this.#filled < BLOCK) continue;
      this.port.postMessage(this.#block.slice());
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("tap", Tap);
