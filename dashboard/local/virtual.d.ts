/** Address of the file that holds the server's tables, read and checked when the pages were built. */
declare module "virtual:catalogue" {
  const address: string;
  export default address;
}
