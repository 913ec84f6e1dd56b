/** TO BE WRITTEN by the owner of this package. */
package vestiary.vesting;
