@echo off
rem Starts Longlow. Builds it on first use. Needs a JDK 17 or newer, and Maven for building only.
setlocal
set "HERE=%~dp0"
set "TARGET=%HERE%target"
set "JAVA=java"
set "ARCHIVE=%TARGET%\longlow.jsa"
set "WINDOW_ARCHIVE=%TARGET%\longlow-window.jsa"
set "CLASSES=%TARGET%\longlow-sketcher.jar;%TARGET%\lib\*"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
set "STALE="
if not exist "%TARGET%\longlow.built" set "STALE=1"
if not defined STALE for /f %%s in ('powershell -NoProfile -Command "$t=(Get-Item '%TARGET%\longlow.built').LastWriteTime; if (Get-ChildItem '%HERE%..' -Recurse -File ^| Where-Object { $_.FullName -notmatch '\\(target^|\.git)\\' -and ($_.FullName -match '\\src\\main\\' -or $_.Name -eq 'pom.xml') -and $_.LastWriteTime -gt $t } ^| Select-Object -First 1) { 'yes' }"') do set "STALE=1"
if defined STALE (
  echo longlow: building ^(the first time fetches libraries and takes a few minutes^) 1>&2
  pushd "%HERE%.."
  call mvn -q -B -Dmaven.test.skip=true -Dspotless.check.skip=true -pl sketcher -am package
  if errorlevel 1 (
    popd
    echo longlow: the build failed 1>&2
    exit /b 1
  )
  popd
  del /f /q "%ARCHIVE%" "%WINDOW_ARCHIVE%" 2>nul
  rem A class archive makes later starts quick; without it everything works the same, only slower.
  "%JAVA%" "-XX:ArchiveClassesAtExit=%ARCHIVE%" -Djava.awt.headless=true -cp "%CLASSES%" org.longlow.sketcher.Launcher warm-up >nul 2>&1
  echo built> "%TARGET%\longlow.built"
)
set "OPTIONS=-Xmx512m -XX:+UseSerialGC -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -Dfile.encoding=UTF-8"
set "WINDOW="
if "%~1"=="" set "WINDOW=1"
if "%~1"=="open" set "WINDOW=1"
if defined WINDOW (
  rem The window's classes cannot be loaded without a screen, so its archive is made when the first window is closed.
  if exist "%WINDOW_ARCHIVE%" (
    set "SHARED=-XX:SharedArchiveFile=%WINDOW_ARCHIVE%"
  ) else (
    set "SHARED=-XX:ArchiveClassesAtExit=%WINDOW_ARCHIVE%"
  )
) else (
  set "SHARED=-XX:SharedArchiveFile=%ARCHIVE%"
  set "OPTIONS=%OPTIONS% -Djava.awt.headless=true"
)
if not defined WINDOW if not "%~1"=="place" if not "%~1"=="fit" set "OPTIONS=%OPTIONS% -XX:TieredStopAtLevel=1"
"%JAVA%" %OPTIONS% "%SHARED%" -cp "%CLASSES%" org.longlow.sketcher.Launcher %*
exit /b %ERRORLEVEL%
