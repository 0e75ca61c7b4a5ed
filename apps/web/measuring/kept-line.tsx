type Props = { readonly what: string; readonly onDevice: boolean };

/** The line at the top that says where her figures are: not sent anywhere before they become a hall. */
export function KeptLine({ what, onDevice }: Props) {
  const words = onDevice
    ? "Kept on this device at every key."
    : "This device keeps nothing: do not close the page.";
  return (
    <div className="save-bar" data-trouble={!onDevice || undefined}>
      <p className="row">
        <strong>{what}</strong>
        <span className="save-words">{words}</span>
      </p>
      <output className="unseen">{onDevice ? "" : words}</output>
    </div>
  );
}
