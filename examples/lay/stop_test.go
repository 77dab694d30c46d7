package main

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"os"
	"os/exec"
	"os/signal"
	"strings"
	"syscall"
	"testing"
	"time"
)

// A write that fails is told of, and the rest is not laid.
func TestFailedWrite(t *testing.T) {
	for _, args := range [][]string{
		{"-work", "1"}, {"-work", "1", "-json"}, {"-work", "1", "-table", "-seeds", "1"}, {"-check", put(t, "lay", laidTwo)},
	} {
		var errs bytes.Buffer
		full := writer(func([]byte) (int, error) { return 0, errors.New("the disk is full") })
		path := put(t, "two.json", two)
		if code := run(context.Background(), append(args, path, path), full, &errs); code != 1 || strings.Count(errs.String(), "the disk is full") != 1 {
			t.Errorf("%v: code %d, %s", args, code, errs.String())
		}
	}
}

type writer func([]byte) (int, error)

func (w writer) Write(p []byte) (int, error) { return w(p) }

// Stopped after the first lay, the program has written it, says how far it came
// and that it was stopped, and exits with 0.
func TestStopped(t *testing.T) {
	for _, form := range [][]string{nil, {"-json"}, {"-table"}} {
		ctx, stop := context.WithCancel(context.Background())
		var out, errs bytes.Buffer
		lines := writer(func(p []byte) (int, error) {
			stop() // the first lay is written; of the table, its head
			return out.Write(p)
		})
		code := run(ctx, append(form, "-work", "1", "-seeds", "1000000", "testdata/jakobs1.json", "testdata/blaz1.json"), lines, &errs)
		if code != 0 || !strings.Contains(out.String(), "jakobs1") || strings.Contains(out.String(), "blaz1\"") {
			t.Errorf("%v: code %d, %s", form, code, out.String())
		}
		for _, want := range []string{"1 of 1000000 seeds", "testdata/blaz1.json: not laid", "lay: stopped before the end"} {
			if !strings.Contains(errs.String(), want) {
				t.Errorf("%v: no %q in %s", form, want, errs.String())
			}
		}
	}
}

// With this variable set the test binary is the program.
const asProgram = "CLOTHYARD_TEST_LAY"

func TestMain(m *testing.M) {
	if os.Getenv(asProgram) != "" {
		main()
	}
	os.Exit(m.Run())
}

// Each of the three signals stops the program itself, after the seeds that are
// finished and with the best lay of the one that is not. One that is ignored from
// the start, as nohup has it, does not.
func TestSignals(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP} {
		ignored := signal.Ignored(sig)
		cmd := exec.Command(os.Args[0], "-work", "1", "-seeds", "1000000", "-json", "testdata/blaz1.json")
		cmd.Env = append(os.Environ(), asProgram+"=1")
		var errs bytes.Buffer
		cmd.Stderr = &errs
		out, err := cmd.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		lines := bufio.NewScanner(out)
		n, most := 0, 500
		for ; n < most && lines.Scan(); n++ {
			oneLay(t, lines.Text())
			if n == 1 {
				if err := cmd.Process.Signal(sig); err != nil {
					t.Error(err)
				}
				if ignored {
					most = 4
				}
			}
		}
		if n == most {
			if err := cmd.Process.Kill(); err != nil {
				t.Error(err)
			}
		}
		err = cmd.Wait()
		switch {
		case ignored && n < most:
			t.Errorf("%v stops the program though it is ignored: %v", sig, err)
		case !ignored && (err != nil || n < 2 || !strings.Contains(errs.String(), "lay: stopped before the end")):
			t.Errorf("%v after %d lays: %v %s", sig, n, err, errs.String())
		}
	}
}

// Stopped in the midst of a search, it writes the best lay so far, which holds.
func TestStoppedInSearch(t *testing.T) {
	ctx, stop := context.WithTimeout(context.Background(), 200*time.Millisecond)
	defer stop()
	var out, errs bytes.Buffer
	if code := run(ctx, []string{"-work", "1000000", "-json", "testdata/jakobs1.json"}, &out, &errs); code != 0 || !strings.Contains(errs.String(), "lay: stopped before the end") {
		t.Errorf("code %d, %s", code, errs.String())
	}
	if code, _, errs := lays(t, "-check", put(t, "lay", out.String()), "testdata/jakobs1.json"); code != 0 {
		t.Error(errs)
	}
}

// A lay is found however short the time is, and it holds.
func TestFirstLay(t *testing.T) {
	for _, name := range []string{"shirts", "jakobs1", "dighe1", "rect_c1p1"} {
		for _, d := range []string{"1ns", "1ms"} {
			path := "testdata/" + name + ".json"
			code, out, errs := lays(t, "-time", d, "-json", path)
			if code != 0 {
				t.Errorf("%s in %s: %s", name, d, errs)
				continue
			}
			if code, _, errs := lays(t, "-check", put(t, "lay", out), path); code != 0 {
				t.Errorf("%s in %s: %s", name, d, errs)
			}
		}
	}
}

// Stopped before a lay is begun, it says which were not laid.
func TestStoppedBefore(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	var out, errs bytes.Buffer
	o := options{seeds: 2}
	w := bufio.NewWriter(&out)
	if err := o.file(ctx, "testdata/blaz1.json", w, &errs); err != nil || out.Len() > 0 || !strings.Contains(errs.String(), "testdata/blaz1.json: not laid") {
		t.Errorf("%v, %s%s", err, out.String(), errs.String())
	}
}
