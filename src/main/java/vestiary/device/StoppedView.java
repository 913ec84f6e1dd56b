package vestiary.device;

import vestiary.web.Frame;

/** A shared device on which too many codes were wrong. */
record StoppedView(Frame frame) {}
