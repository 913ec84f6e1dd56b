/**
 * The backup of a cluster: one archive with every row that is its own, and the way back from it
 * into a server that does not have the cluster. Which tables there are is asked of the database, so
 * that a new one cannot be forgotten. Start at {@link vestiary.backup.WriteBackup} and {@link
 * vestiary.backup.RestoreBackup}.
 */
package vestiary.backup;
