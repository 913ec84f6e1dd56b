/** The mail server that is named, if one is; whoever writes a mail words it. */
package vestiary.mail;
