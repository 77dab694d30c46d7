package units

// The binary form of a value is its exact text, for encoding/gob and whatever else
// asks for bytes: it reads back equal, an enclosure of a Near or a NearRatio to
// bounds that enclose it, which cannot be refined. It is no longer than [MaxText].

// AppendBinary appends the text of l as bytes.
func (l Length) AppendBinary(b []byte) ([]byte, error) { return l.AppendText(b) }

// MarshalBinary is the text of l as bytes. It fails where [Length.MarshalText] does.
func (l Length) MarshalBinary() ([]byte, error) { return l.MarshalText() }

// UnmarshalBinary reads what [Length.MarshalBinary] wrote.
func (l *Length) UnmarshalBinary(data []byte) error { return l.UnmarshalText(data) }

// AppendBinary appends the text of r as bytes.
func (r Ratio) AppendBinary(b []byte) ([]byte, error) { return r.AppendText(b) }

// MarshalBinary is the text of r as bytes. It fails where [Ratio.MarshalText] does.
func (r Ratio) MarshalBinary() ([]byte, error) { return r.MarshalText() }

// UnmarshalBinary reads what [Ratio.MarshalBinary] wrote.
func (r *Ratio) UnmarshalBinary(data []byte) error { return r.UnmarshalText(data) }

// AppendBinary appends the text of a as bytes.
func (a Area) AppendBinary(b []byte) ([]byte, error) { return a.AppendText(b) }

// MarshalBinary is the text of a as bytes. It fails where [Area.MarshalText] does.
func (a Area) MarshalBinary() ([]byte, error) { return a.MarshalText() }

// UnmarshalBinary reads what [Area.MarshalBinary] wrote.
func (a *Area) UnmarshalBinary(data []byte) error { return a.UnmarshalText(data) }

// AppendBinary appends the text of n as bytes.
func (n Near) AppendBinary(b []byte) ([]byte, error) { return n.AppendText(b) }

// MarshalBinary is the text of n as bytes. It fails where [Near.MarshalText] does.
func (n Near) MarshalBinary() ([]byte, error) { return n.MarshalText() }

// UnmarshalBinary reads what [Near.MarshalBinary] wrote; an enclosure then cannot be
// refined.
func (n *Near) UnmarshalBinary(data []byte) error { return n.UnmarshalText(data) }

// AppendBinary appends the text of n as bytes.
func (n NearRatio) AppendBinary(b []byte) ([]byte, error) { return n.AppendText(b) }

// MarshalBinary is the text of n as bytes. It fails where [NearRatio.MarshalText]
// does.
func (n NearRatio) MarshalBinary() ([]byte, error) { return n.MarshalText() }

// UnmarshalBinary reads what [NearRatio.MarshalBinary] wrote; an enclosure then
// cannot be refined.
func (n *NearRatio) UnmarshalBinary(data []byte) error { return n.UnmarshalText(data) }
