/**
 * Phones and computers that several people of a sacristy share: they stay signed in for their
 * church and ask for a name or a code whenever something is changed. Start at {@link
 * vestiary.device.WhoseHands}.
 */
package vestiary.device;
