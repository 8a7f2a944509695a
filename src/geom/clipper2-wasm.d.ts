declare module "clipper2-wasm" {
  import type { MainModule } from "clipper2-wasm/dist/clipper2z";

  const factory: (options?: {
    locateFile?: (file: string) => string;
    print?: () => void;
    printErr?: () => void;
  }) => Promise<MainModule>;
  export default factory;
}
