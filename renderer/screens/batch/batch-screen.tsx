export const BatchScreen = ({ batchId }: { batchId: string }) => <h1>{batchId}</h1>
