DELETE FROM session;
