/** The parts of three.js that the tests hold our readers against; its own types are a package of their own. */
declare module 'three' {
  export const FloatType: number;
}

declare module 'three/examples/jsm/loaders/IESLoader.js' {
  export class IESLoader {
    type: number;
    parse(text: string): {
      readonly image: {
        readonly data: Float32Array;
        readonly width: number;
        readonly height: number;
      };
    };
  }
}
