import type { TaxTableDocument } from "#core/cash";
import { DateField } from "../fields/date-field.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";

type TableProps = {
  readonly table: TaxTableDocument;
  readonly path: string;
  readonly put: (table: TaxTableDocument) => void;
};

/** The figures of one table of rates. */
export function RateTableFields({ table, path, put }: TableProps) {
  const said = table.from.slice(0, 4);
  return (
    <fieldset className="fields">
      <legend>{table.name}</legend>
      <DateField label={`First day, ${said}`} value={table.from} put={(from) => put({ ...table, from })} />
      <DateField label={`Last day, ${said}`} value={table.until} put={(until) => put({ ...table, until })} />
      {table.rules === "uk" ? (
        <UkFields table={table} path={path} put={put} />
      ) : (
        <UsFields table={table} path={path} put={put} />
      )}
    </fieldset>
  );
}

type Uk = Extract<TaxTableDocument, { rules: "uk" }>;
type Us = Extract<TaxTableDocument, { rules: "us" }>;

function UkFields({ table, path, put }: TableProps & { readonly table: Uk }) {
  const { allowance, class4 } = table;
  return (
    <>
      <MoneyField
        path={`${path}.allowance.amount`}
        label="Personal allowance"
        value={allowance.amount}
        put={(amount) => put({ ...table, allowance: { ...allowance, amount } })}
      />
      <BandRows path={`${path}.bands`} bands={table.bands} put={(bands) => put({ ...table, bands })} />
      <MoneyField
        path={`${path}.class4.from`}
        label="Class 4 from a profit of"
        value={class4.from}
        put={(from) => put({ ...table, class4: { ...class4, from } })}
      />
      <MoneyField
        path={`${path}.class4.upTo`}
        label="Class 4, the main rate up to"
        value={class4.upTo}
        put={(upTo) => put({ ...table, class4: { ...class4, upTo } })}
      />
      <PercentField
        path={`${path}.class4.rate`}
        label="Class 4, the main rate"
        value={class4.rate}
        put={(rate) => put({ ...table, class4: { ...class4, rate } })}
      />
      <PercentField
        path={`${path}.class4.above`}
        label="Class 4 above that"
        value={class4.above}
        put={(above) => put({ ...table, class4: { ...class4, above } })}
      />
      <MoneyField
        path={`${path}.tradingAllowance`}
        label="Trading allowance"
        value={table.tradingAllowance}
        put={(tradingAllowance) => put({ ...table, tradingAllowance })}
      />
    </>
  );
}

function UsFields({ table, path, put }: TableProps & { readonly table: Us }) {
  const { deduction, selfEmployment, bands } = table;
  return (
    <>
      <MoneyField
        path={`${path}.deduction.single`}
        label="Standard deduction, single"
        value={deduction.single}
        put={(single) => put({ ...table, deduction: { ...deduction, single } })}
      />
      <MoneyField
        path={`${path}.deduction.joint`}
        label="Standard deduction, jointly"
        value={deduction.joint}
        put={(joint) => put({ ...table, deduction: { ...deduction, joint } })}
      />
      <MoneyField
        path={`${path}.selfEmployment.socialUpTo`}
        label="Self-employment tax, wage base"
        value={selfEmployment.socialUpTo}
        put={(socialUpTo) => put({ ...table, selfEmployment: { ...selfEmployment, socialUpTo } })}
      />
      <BandRows
        path={`${path}.bands.single`}
        called="single"
        bands={bands.single}
        put={(single) => put({ ...table, bands: { ...bands, single } })}
      />
      <BandRows
        path={`${path}.bands.joint`}
        called="jointly"
        bands={bands.joint}
        put={(joint) => put({ ...table, bands: { ...bands, joint } })}
      />
    </>
  );
}

type Bands = Uk["bands"];
type BandsProps = {
  readonly path: string;
  readonly called?: string;
  readonly bands: Bands;
  readonly put: (bands: Bands) => void;
};

/** Each band: up to how much of the taxed income, at what rate; the last has no end. */
function BandRows({ path, called, bands, put }: BandsProps) {
  const name = called === undefined ? "" : `, ${called}`;
  const change = (at: number, part: Partial<Bands[number]>) =>
    put(bands.map((band, index) => (index === at ? { ...band, ...part } : band)));
  return bands.map(({ upTo, rate }, at) => (
    // a band has no name of its own: its place is what tells it apart
    // oxlint-disable-next-line react/no-array-index-key
    <div key={at}>
      {upTo === null ? null : (
        <MoneyField
          path={`${path}[${at}].upTo`}
          label={`Band ${at + 1}${name}: taxed income up to`}
          value={upTo}
          put={(next) => change(at, { upTo: next })}
        />
      )}
      <PercentField
        path={`${path}[${at}].rate`}
        label={`Band ${at + 1}${name}: rate`}
        value={rate}
        put={(next) => change(at, { rate: next })}
      />
    </div>
  ));
}
