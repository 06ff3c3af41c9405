// Puts bills of materials (CycloneDX JSON) together: the first one's product is made of what all of them list. Time and number
// of the writing are left out, so that the same parts give the same bill.
import { readFileSync } from 'node:fs';

const [bill, ...others] = process.argv.slice(2).map((name) => JSON.parse(readFileSync(name, 'utf8')));
const product = bill.metadata.component['bom-ref'];
const own = bill.dependencies.find((d) => d.ref === product);
for (const other of others) {
  const root = other.dependencies.find((d) => d.ref === other.metadata.component['bom-ref']);
  own.dependsOn.push(...root.dependsOn);
  bill.components.push(...other.components);
  bill.dependencies.push(...other.dependencies.filter((d) => d !== root));
}

delete bill.metadata.timestamp;
delete bill.serialNumber;
process.stdout.write(`${JSON.stringify(bill, null, 2)}\n`);
