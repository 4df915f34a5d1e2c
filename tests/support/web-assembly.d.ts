// Two names of the web's own types that the grammar engine's declarations use and Node's types leave out.

declare namespace WebAssembly {
  type ImportValue = unknown;
  type WebAssemblyInstantiatedSource = unknown;
}
