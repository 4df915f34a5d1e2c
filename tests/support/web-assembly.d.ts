// Two names of the web's own types that the grammar engine's declarations use and Node's types leave out.

declare namespace WebAssembly {
  type ImportValue = unknown;
  interface WebAssemblyInstantiatedSource { readonly instance: Instance; readonly module: Module }
}
