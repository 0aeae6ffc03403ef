// The phone's camera as a source of texts: opens it, looks at one frame after another, closes it. The browser's
// own reader of codes is used where there is one; elsewhere one that is loaded when it is first needed.

export type CameraRefusal = 'denied' | 'none' | 'busy' | 'insecure';

/** Code side seen by the reader: more makes small squares plainer and a cheap phone slower. */
const SIDE = 900;
/** By turns: large for a fine code held well, smaller because that evens out the grain of a poor camera. */
const SCALES = [1, 2 / 3, 1 / 2];
/** A breath between two looks, so that the screen stays quick to the touch. */
const BREATH = 40;

interface BarcodeReader {
  detect(source: CanvasImageSource): Promise<{ rawValue: string }[]>;
}
interface BarcodeReaderMaker {
  new (options: { formats: string[] }): BarcodeReader;
  getSupportedFormats(): Promise<string[]>;
}

type Look = (canvas: HTMLCanvasElement, context: CanvasRenderingContext2D) => Promise<string | undefined>;

async function builtIn(): Promise<Look | undefined> {
  const maker = (globalThis as { BarcodeDetector?: BarcodeReaderMaker }).BarcodeDetector;
  if (!maker || !(await maker.getSupportedFormats()).includes('qr_code')) return undefined;
  const reader = new maker({ formats: ['qr_code'] });
  return async (canvas) => (await reader.detect(canvas))[0]?.rawValue;
}

async function own(): Promise<Look> {
  const { default: jsQR } = await import('jsqr');
  return async (canvas, context) => {
    const image = context.getImageData(0, 0, canvas.width, canvas.height);
    return jsQR(image.data, image.width, image.height, { inversionAttempts: 'dontInvert' })?.data;
  };
}

function refusalOf(error: unknown): CameraRefusal {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'denied';
  if (name === 'NotReadableError' || name === 'AbortError') return 'busy';
  return 'none';
}

/** True when it may be opened without asking. */
export async function cameraAllowed(): Promise<boolean> {
  try {
    const answer = await navigator.permissions.query({ name: 'camera' as PermissionName });
    return answer.state === 'granted';
  } catch {
    return false;
  }
}

export class Camera {
  readonly #video: HTMLVideoElement;
  readonly #seen: (text: string) => void;
  #stream: MediaStream | undefined;
  #closed = false;

  private constructor(video: HTMLVideoElement, seen: (text: string) => void) {
    this.#video = video;
    this.#seen = seen;
  }

  /** Opens it into `video` and calls `seen` with each text it reads. Says why when it can't be opened. */
  static async open(video: HTMLVideoElement, seen: (text: string) => void): Promise<Camera | CameraRefusal> {
    if (!navigator.mediaDevices?.getUserMedia) return 'insecure';
    const camera = new Camera(video, seen);
    try {
      camera.#stream = await navigator.mediaDevices.getUserMedia({
        video: { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } },
      });
      video.srcObject = camera.#stream;
      await video.play();
    } catch (error) {
      camera.close();
      return refusalOf(error);
    }
    void camera.#watch();
    return camera;
  }

  get #track(): MediaStreamTrack | undefined {
    return this.#stream?.getVideoTracks()[0];
  }

  get hasTorch(): boolean {
    const able = this.#track?.getCapabilities?.() as { torch?: boolean } | undefined;
    return able?.torch === true;
  }

  async torch(on: boolean): Promise<void> {
    await this.#track?.applyConstraints({ advanced: [{ torch: on } as MediaTrackConstraintSet] });
  }

  async #watch(): Promise<void> {
    const look = (await builtIn()) ?? (await own());
    const canvas = document.createElement('canvas');
    const context = canvas.getContext('2d', { willReadFrequently: true });
    for (let turn = 0; !this.#closed && context; turn += 1) {
      const { videoWidth: width, videoHeight: height } = this.#video;
      // The square in the middle is what the screen shows and what people aim with.
      const square = Math.min(width, height);
      if (square > 0) {
        const side = Math.round(Math.min(square, SIDE) * (SCALES[turn % SCALES.length] ?? 1));
        if (canvas.width !== side) canvas.width = canvas.height = side;
        const [x, y] = [(width - square) / 2, (height - square) / 2];
        context.drawImage(this.#video, x, y, square, square, 0, 0, side, side);
        const text = await look(canvas, context);
        if (text && !this.#closed) this.#seen(text);
      }
      await new Promise((done) => setTimeout(done, BREATH));
    }
  }

  close(): void {
    this.#closed = true;
    for (const track of this.#stream?.getTracks() ?? []) track.stop();
    this.#video.srcObject = null;
  }
}
