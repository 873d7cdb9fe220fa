@echo off
rem Starts Monochord on Windows. On first use, when a source is newer than the jar, and when a file of the last build is
rem missing or cut short, it builds with Maven.
rem
rem   JAVA_HOME             the JDK to use (17 or newer); without it, the java on the PATH
rem   MONOCHORD_JAVA_OPTS   more options for the JVM
rem
rem A build may be killed at any moment and is then either whole or not there: Maven builds in target\staged, and its last
rem act is the list target\staged\libraries (see pom.xml). Jar and libraries are then moved to target, and last the stamp,
rem target\stamp: the size and name of each file. Only a build that fits its stamp is started.
rem
rem Two files that are open for writing are the lock: target\.building as long as the start lives that builds, and
rem target\build.log as long as its Maven lives, which may be longer. Windows closes both for whoever was killed.
rem
rem The class-data archive is the JVM's own affair here: from Java 19 on it makes and renews it by itself, and
rem Java 17 passes over the option.
setlocal
set "ROOT=%~dp0"
set "TARGET=%ROOT%target"
set "STAGED=%TARGET%\staged"
set "LOG=%TARGET%\build.log"
set "JAR=%TARGET%\monochord.jar"
set "NEEDS=Monochord needs a JDK 17 or newer: install one, or set JAVA_HOME to it."

if defined JAVA_HOME (
    set "HOME_OF_JAVA=%JAVA_HOME%"
) else (
    set "HOME_OF_JAVA="
    for /f "tokens=1* delims==" %%a in ('java -XshowSettings:properties -version 2^>^&1 ^| findstr /c:"java.home ="') do (
        for /f "tokens=*" %%h in ("%%b") do set "HOME_OF_JAVA=%%h"
    )
)
if not defined HOME_OF_JAVA (
    echo monochord: no Java was found. %NEEDS% 1>&2
    exit /b 3
)
if not exist "%HOME_OF_JAVA%\bin\java.exe" (
    echo monochord: there is no bin\java.exe in "%HOME_OF_JAVA%". %NEEDS% 1>&2
    exit /b 3
)
if not exist "%HOME_OF_JAVA%\bin\javac.exe" (
    echo monochord: the Java in "%HOME_OF_JAVA%" is a runtime without a compiler, a JRE. %NEEDS% 1>&2
    exit /b 3
)
set "VERSION="
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_VERSION=" "%HOME_OF_JAVA%\release"') do set "VERSION=%%~v"
set "MAJOR=0"
for /f "tokens=1 delims=.-+" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS 17 (
    echo monochord: the Java in "%HOME_OF_JAVA%" is version %VERSION%. %NEEDS% 1>&2
    exit /b 3
)

call :look
if "%STATE%"=="current" goto start

rem --- building ---------------------------------------------------------------

if not exist "%TARGET%" mkdir "%TARGET%" 2>nul
set "PROBE=%TARGET%\.probe%RANDOM%%RANDOM%"
2>nul (>"%PROBE%" (call )) || goto without_writing
del /q "%PROBE%"
set "TOLD="
:await
set "LOCKED="
8>&2 2>nul (
    9>"%TARGET%\.building" (
        2>&8 call :locked
    )
)
if defined LOCKED goto built
if not defined TOLD echo monochord: another start is building, waiting. 1>&2
set "TOLD=yes"
ping -n 2 127.0.0.1 >nul
goto await

:built
if not "%RESULT%"=="0" exit /b %RESULT%
goto start

:without_writing
if exist "%TARGET%\libraries" if exist "%JAR%" goto start
if "%STATE%"=="unbuilt" (
    echo monochord: cannot build: "%TARGET%" cannot be written. 1>&2
    exit /b 3
)
if "%STATE%"=="damaged" (
    echo monochord: a file of the last build is missing or damaged, and "%TARGET%" cannot be written to build again. 1>&2
    exit /b 3
)
echo monochord: the sources are newer than the jar, but "%TARGET%" cannot be written; starting the jar. 1>&2

:start
"%HOME_OF_JAVA%\bin\java.exe" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn8m -XX:-UsePerfData -Xshare:auto -Xlog:disable -XX:+IgnoreUnrecognizedVMOptions -XX:+AutoCreateSharedArchive "-XX:SharedArchiveFile=%TARGET%\monochord.jsa" %MONOCHORD_JAVA_OPTS% -jar "%JAR%" %*
exit /b %errorlevel%

rem --- is it built? -----------------------------------------------------------

rem Sets STATE: "current"; "changed" where a source is newer than what was built; "damaged" where a file of the stamp is
rem missing or has another size; "unbuilt" where there is no stamp, or Maven alone built since. target\seen holds the
rem sources as they were built. xcopy names, and counts in its last line, those that are newer.
:look
set "STATE=unbuilt"
if not exist "%TARGET%\stamp" exit /b 0
if exist "%TARGET%\libraries" exit /b 0
set "STATE=damaged"
set "LISTED="
set "WRONG="
for /f "usebackq tokens=1,2" %%s in ("%TARGET%\stamp") do (
    set "LISTED=yes"
    for %%f in ("%TARGET%\%%t") do if not "%%~zf"=="%%s" set "WRONG=yes"
)
if not defined LISTED exit /b 0
if defined WRONG exit /b 0
set "STATE=changed"
set "CHANGED=1"
for /f "tokens=1" %%n in ('xcopy "%ROOT%src\main" "%TARGET%\seen\main\" /L /D /S /Y') do set "CHANGED=%%n"
if not "%CHANGED%"=="0" exit /b 0
set "CHANGED=1"
for /f "tokens=1" %%n in ('xcopy "%ROOT%pom.xml" "%TARGET%\seen\" /L /D /Y') do set "CHANGED=%%n"
if "%CHANGED%"=="0" set "STATE=current"
exit /b 0

rem --- under the lock ---------------------------------------------------------

rem Builds, unless another start has. Sets LOCKED, to say that the lock was had, and RESULT: 0, or the exit status.
:locked
set "LOCKED=yes"
set "RESULT=3"
set "PLACED="
call :follow
call :settle
if "%STATE%"=="current" set "RESULT=0"
if "%STATE%"=="current" exit /b 0
if "%STATE%"=="in use" exit /b 0
where mvn >nul 2>nul
if errorlevel 1 (
    echo monochord: building needs Maven, and there is no mvn on the PATH. 1>&2
    exit /b 0
)
if "%STATE%"=="unbuilt" echo monochord: building, which happens once and may take a minute. 1>&2
if "%STATE%"=="changed" echo monochord: the sources have changed, building again. 1>&2
if "%STATE%"=="damaged" echo monochord: a file of the last build is missing or damaged, building again. 1>&2
if exist "%STAGED%" rmdir /s /q "%STAGED%"
mkdir "%STAGED%\seen" 2>nul
xcopy "%ROOT%src\main" "%STAGED%\seen\main\" /S /Y /I /Q >nul
xcopy "%ROOT%pom.xml" "%STAGED%\seen\" /Y /I /Q >nul
set "JAVA_HOME=%HOME_OF_JAVA%"
set "MAVEN_OPTS=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC %MAVEN_OPTS%"
rem Behind us, so that we can say what it is doing; and it lives on if we do not.
start "" /b cmd /c mvn -B -f "%ROOT%pom.xml" "-Dbuild.folder=%STAGED%" -Dmaven.test.skip=true -Dspotless.skip=true package >"%LOG%" 2>&1 <nul
set "TOLD=yes"
set "PLACED="
call :follow
call :settle
if "%STATE%"=="in use" exit /b 0
if "%STATE%"=="current" set "RESULT=0"
rem What was edited while Maven built is for the next start.
if "%STATE%"=="changed" if defined PLACED set "RESULT=0"
if not "%RESULT%"=="0" echo monochord: the build failed; what Maven said is in "%LOG%". 1>&2
exit /b 0

rem Waits as long as a Maven has the log open, and says what it is doing: a line for each stage, and one every ten seconds.
:follow
set "STAGE=getting ready"
set "QUIET=0"
:follow_on
2>nul (>>"%LOG%" (call )) && exit /b 0
if not defined TOLD echo monochord: another start is building, waiting. 1>&2
set "TOLD=yes"
ping -n 2 127.0.0.1 >nul
set "NOW=%STAGE%"
findstr /c:"Downloading from " "%LOG%" >nul 2>nul && set "NOW=fetching tools and libraries"
findstr /r /c:"--- .*compiler.*:compile " "%LOG%" >nul 2>nul && set "NOW=compiling"
findstr /r /c:"--- .*jar.*:jar " "%LOG%" >nul 2>nul && set "NOW=putting it together"
set /a QUIET+=1
if not "%NOW%"=="%STAGE%" echo monochord: building: %NOW%. 1>&2
if not "%NOW%"=="%STAGE%" set "QUIET=0"
set "STAGE=%NOW%"
if %QUIET% LSS 10 goto follow_on
echo monochord: building: still %STAGE%. 1>&2
set "QUIET=0"
goto follow_on

rem Brings home what Maven has finished, and sets STATE; "in use" where a program that runs keeps its jars open.
:settle
call :look
if "%STATE%"=="current" exit /b 0
if not exist "%STAGED%\libraries" exit /b 0
call :put_in_place
if not errorlevel 1 goto look
echo monochord: the new build cannot be put in place while Monochord runs in another window: close it, then start again. 1>&2
set "STATE=in use"
exit /b 0

rem Moves the build from target\staged to its place, or what is still there of it. Fails where a file is in use.
:put_in_place
if not exist "%STAGED%\stamp.new" (
    >"%STAGED%\stamp.part" (
        for %%f in ("%STAGED%\monochord.jar") do echo %%~zf monochord.jar
        for %%f in ("%STAGED%\lib\*.jar") do echo %%~zf lib\%%~nxf
    )
    move /y "%STAGED%\stamp.part" "%STAGED%\stamp.new" >nul
)
if exist "%TARGET%\stamp" del /q "%TARGET%\stamp"
if exist "%TARGET%\stamp" exit /b 1
if exist "%TARGET%\libraries" del /q "%TARGET%\libraries"
if not exist "%TARGET%\lib" mkdir "%TARGET%\lib"
for %%f in ("%STAGED%\lib\*.jar") do move /y "%%f" "%TARGET%\lib\" >nul 2>nul || exit /b 1
if exist "%STAGED%\monochord.jar" move /y "%STAGED%\monochord.jar" "%JAR%" >nul 2>nul || exit /b 1
if exist "%STAGED%\seen" if exist "%TARGET%\seen" rmdir /s /q "%TARGET%\seen"
if exist "%STAGED%\seen" move /y "%STAGED%\seen" "%TARGET%\seen" >nul 2>nul || exit /b 1
del /q "%STAGED%\libraries"
move /y "%STAGED%\stamp.new" "%TARGET%\stamp" >nul 2>nul || exit /b 1
for %%f in ("%TARGET%\lib\*.jar") do findstr /l /e /c:"%%~nxf" "%TARGET%\stamp" >nul || del /q "%%f" 2>nul
rmdir /s /q "%STAGED%" 2>nul
set "PLACED=yes"
exit /b 0
