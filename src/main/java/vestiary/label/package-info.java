/**
 * Labels on hangers, printed on sheets that can be bought, and the page that their scan opens on a
 * phone. Start at {@link vestiary.label.ScanPage}.
 */
package vestiary.label;
